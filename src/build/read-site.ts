import { KitError } from "../input/files/message.ts";
import { checkPhotos } from "./images/photos.ts";
import { KitCrew } from "./kits/kit-crew.ts";
import { holdLibrary } from "./library/held-library.ts";
import { type Library, openLibrary } from "./library/library.ts";
import { Store } from "./store/store.ts";

/** A site that was read, and who reads and makes its kits. */
export interface ReadSite {
  readonly library: Library;
  readonly crew: KitCrew;
}

/**
 * Reads the site in the project `base` with all that could stop a build of it: what `npm run check` finds is what a build finds.
 * From then on it is the library of the run. `kits` are the folders of the only ones to read; none for all that are no drafts.
 * @throws KitError
 */
export async function readSite(base: string, kits: readonly string[] = []): Promise<ReadSite> {
  const store = new Store();
  const crew = new KitCrew(store);
  try {
    const library = await openLibrary(base, { kits }, { store, readKits: (facts) => crew.reader(facts) });
    const messages = [...library.photoMessages, ...(await checkPhotos(base, library.photos))];
    if (messages.length > 0) throw new KitError(messages);
    holdLibrary(library);
    return { library, crew };
  } catch (error) {
    await crew.close();
    throw error;
  }
}
