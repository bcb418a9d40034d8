import type { Photo } from "../../core/kit/kit.ts";
import type { KitMessage } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import * as say from "../../words/messages.ts";
import type { Library } from "../library/library.ts";

/** A photo of a page. */
export interface SitePhoto {
  readonly photo: Photo;
  /** The folder of its original below the project, and of its page below the output. */
  readonly source: string;
  readonly target: string;
  /** Where it is named. */
  readonly at: Pick<KitMessage, "file" | "line" | "column" | "field">;
}

/** Every photo of a site's pages, each once a page: those that kits list, and those that texts show. */
export function sitePhotos({ views, classes, story }: Pick<Library, "views" | "classes" | "story">): SitePhoto[] {
  const told = (target: string): SitePhoto[] => {
    const { file, pictures } = story(`/${target}`);
    const source = file.replace(/\/index\.md$/, "");
    return pictures.map(({ line, ...photo }) => {
      return { photo, source, target, at: { file, line, column: undefined, field: say.storyPicture() } };
    });
  };
  const listed = views.flatMap(({ slug, kit }) =>
    kit.photos.map((photo, i): SitePhoto => {
      const source = `content/kits/${slug}`;
      const at = {
        file: `${source}/index.md`,
        line: undefined,
        column: undefined,
        field: fieldName(["photos", i, "file"]),
      };
      return { photo, source, target: `kits/${slug}/`, at };
    }),
  );
  const all = [
    ...listed,
    ...told(""),
    ...views.flatMap(({ slug }) => told(`kits/${slug}/`)),
    ...classes.flatMap(({ slug }) => told(`classes/${slug}/`)),
  ];
  return [...new Map(all.toReversed().map((one) => [`${one.target}${one.photo.file}`, one])).values()].toReversed();
}
