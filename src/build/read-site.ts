import { KitError } from "../input/files/message.ts";
import { checkPhotos } from "./images/photos.ts";
import { holdLibrary } from "./library/current-library.ts";
import { type Library, openLibrary } from "./library/library.ts";

/**
 * Reads the site in the project `base` with all that could stop a build of it: what `npm run check` finds is what a build finds.
 * From then on it is the library of the run. `kits` are the folders of the only ones to read; none for all that are no drafts.
 * @throws KitError
 */
export async function readSite(base: string, kits: readonly string[] = []): Promise<Library> {
  const library = openLibrary(base, { kits });
  const messages = await checkPhotos(base, library.photos);
  if (messages.length > 0) throw new KitError(messages);
  holdLibrary(library);
  return library;
}
