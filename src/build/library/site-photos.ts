import type { Photo } from "../../core/kit/kit.ts";
import type { Story } from "../../core/story/story.ts";
import type { KitMessage } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import type { StatedKit } from "../../input/kit/read-kit.ts";
import { photoStems } from "../../output/views/photo-files.ts";
import * as say from "../../words/messages.ts";

/** A photo of a page. */
export interface SitePhoto {
  readonly photo: Photo;
  /** Where its files stand below the page's folder, but for width and kind. */
  readonly stem: string;
  /** The file below the project that names it: its original stands beside. */
  readonly page: string;
  /** The page's folder below the output. */
  readonly target: string;
  /** Where it is named in that file. */
  readonly at: Pick<KitMessage, "line" | "column" | "field">;
}

/** The photos that a kit lists. */
export function listedPhotos({
  kit: { slug, photos },
  file,
  placeOf,
}: Pick<StatedKit, "kit" | "file" | "placeOf">): SitePhoto[] {
  const stems = photoStems(photos, "photos");
  return photos.map((photo, i): SitePhoto => {
    const path = ["photos", i, "file"];
    const at = { ...placeOf(path), field: fieldName(path) };
    return { photo, stem: stems[i]!, page: file, target: `kits/${slug}/`, at };
  });
}

/** The photos that a text shows on the page at an address below the site: `/kits/moon/`. */
export function toldPhotos(address: string, { file, pictures }: Story): SitePhoto[] {
  const stems = photoStems(pictures, "pictures");
  return pictures.map((photo, i): SitePhoto => {
    const at = { line: photo.line, column: undefined, field: say.storyPicture() };
    return { photo, stem: stems[i]!, page: file, target: address.slice(1), at };
  });
}
