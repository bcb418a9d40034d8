import { fileNames } from "../../core/file-name.ts";
import type { Photo } from "../../core/kit/kit.ts";

/** Widths a photo is offered in, pixels; none larger than the photo itself. */
export const PHOTO_WIDTHS = [480, 960, 1600] as const;

/** Folders beside a page: of the photos that a kit lists, and of the pictures in a text. */
export type PhotoFolder = "photos" | "pictures";

/** Where the files of each photo stand beside the page, but for width and kind: `photos/bench`; whatever folders and scripts its own name has. */
export function photoStems(photos: readonly Photo[], folder: PhotoFolder): string[] {
  const names = photos.map(({ file }) =>
    file
      .split("/")
      .at(-1)!
      .replace(/\.[^.]+$/, ""),
  );
  return fileNames(names, "photo").map((name) => `${folder}/${name}`);
}

/** A file of a photo beside the page: `photos/bench-960.webp`. */
export function photoFile(stem: string, width: number, kind: "webp" | "jpg"): string {
  return `${stem}-${width}.${kind}`;
}

/** A photo with its files for `srcset`. */
export interface PhotoView {
  readonly alt: string;
  readonly webp: string;
  readonly jpeg: string;
  readonly fallback: string;
  /** The largest file that there is. */
  readonly large: string;
}

export function photoViews(photos: readonly Photo[], folder: PhotoFolder): PhotoView[] {
  const stems = photoStems(photos, folder);
  return photos.map(({ alt }, i) => ({
    alt,
    webp: sourceSet(stems[i]!, "webp"),
    jpeg: sourceSet(stems[i]!, "jpg"),
    fallback: photoFile(stems[i]!, PHOTO_WIDTHS[1], "jpg"),
    large: photoFile(stems[i]!, PHOTO_WIDTHS[2], "webp"),
  }));
}

function sourceSet(stem: string, kind: "webp" | "jpg"): string {
  return PHOTO_WIDTHS.map((width) => `${photoFile(stem, width, kind)} ${width}w`).join(", ");
}
