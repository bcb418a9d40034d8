import { fileName } from "../../core/file-name.ts";
import type { Kit, Photo } from "../../core/kit/kit.ts";

/** Widths a photo is offered in, pixels; none larger than the photo itself. */
export const PHOTO_WIDTHS = [480, 960, 1600] as const;

/** The names of a photo's files beside the page: `photos/bench-960.webp`. */
export function photoFile(photo: Photo, width: number, kind: "webp" | "jpg"): string {
  const name = photo.file
    .split("/")
    .at(-1)!
    .replace(/\.[^.]+$/, "");
  return `photos/${fileName(name)}-${width}.${kind}`;
}

/** A photo with its files for `srcset`. */
export interface PhotoView {
  readonly alt: string;
  readonly webp: string;
  readonly jpeg: string;
  readonly fallback: string;
}

export function photoViews({ photos }: Kit): PhotoView[] {
  return photos.map(photoView);
}

/** A photo with its files, of which a browser chooses. */
export function photoView(photo: Photo): PhotoView {
  return {
    alt: photo.alt,
    webp: sourceSet(photo, "webp"),
    jpeg: sourceSet(photo, "jpg"),
    fallback: photoFile(photo, PHOTO_WIDTHS[1], "jpg"),
  };
}

function sourceSet(photo: Photo, kind: "webp" | "jpg"): string {
  return PHOTO_WIDTHS.map((width) => `${photoFile(photo, width, kind)} ${width}w`).join(", ");
}
