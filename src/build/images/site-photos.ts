import type { Photo } from "../../core/kit/kit.ts";
import type { KitMessage } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { photoStems } from "../../output/views/photo-files.ts";
import * as say from "../../words/messages.ts";
import type { Library } from "../library/library.ts";

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

/** Every photo of a site's pages: those that kits list, and those that texts show. */
export function sitePhotos({ views, classes, story }: Pick<Library, "views" | "classes" | "story">): SitePhoto[] {
  const told = (target: string): SitePhoto[] => {
    const { file: page, pictures } = story(`/${target}`);
    const stems = photoStems(pictures, "pictures");
    return pictures.map((photo, i) => {
      const at = { line: photo.line, column: undefined, field: say.storyPicture() };
      return { photo, stem: stems[i]!, page, target, at };
    });
  };
  const listed = ({ slug, kit: { photos } }: KitView): SitePhoto[] => {
    const stems = photoStems(photos, "photos");
    return photos.map((photo, i) => {
      const at = { line: undefined, column: undefined, field: fieldName(["photos", i, "file"]) };
      return { photo, stem: stems[i]!, page: `content/kits/${slug}/index.md`, target: `kits/${slug}/`, at };
    });
  };
  return [
    ...told(""),
    ...views.flatMap((view) => [...listed(view), ...told(`kits/${view.slug}/`)]),
    ...classes.flatMap(({ slug }) => told(`classes/${slug}/`)),
  ];
}
