import { fileName } from "../../core/file-name.ts";
import type { Photo } from "../../core/kit/kit.ts";

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
