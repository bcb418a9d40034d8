import { fileNames } from "../../core/file-name.ts";
import type { Kit, Photo } from "../../core/kit/kit.ts";

/** Widths a photo is offered in, pixels; none larger than the photo itself. */
export const PHOTO_WIDTHS = [480, 960, 1600] as const;

/** What the files of each photo are called, whatever folders and scripts its own name has. */
export function photoNames(photos: readonly Photo[]): string[] {
  return fileNames(
    photos.map(({ file }) =>
      file
        .split("/")
        .at(-1)!
        .replace(/\.[^.]+$/, ""),
    ),
    "photo",
  );
}

/** A file of a photo beside the page: `photos/bench-960.webp`. */
export function photoFile(name: string, width: number, kind: "webp" | "jpg"): string {
  return `photos/${name}-${width}.${kind}`;
}

/** A photo with its files for `srcset`. */
export interface PhotoView {
  readonly alt: string;
  readonly webp: string;
  readonly jpeg: string;
  readonly fallback: string;
}

export function photoViews({ photos }: Pick<Kit, "photos">): PhotoView[] {
  const names = photoNames(photos);
  return photos.map(({ alt }, i) => ({
    alt,
    webp: sourceSet(names[i]!, "webp"),
    jpeg: sourceSet(names[i]!, "jpg"),
    fallback: photoFile(names[i]!, PHOTO_WIDTHS[1], "jpg"),
  }));
}

function sourceSet(name: string, kind: "webp" | "jpg"): string {
  return PHOTO_WIDTHS.map((width) => `${photoFile(name, width, kind)} ${width}w`).join(", ");
}
