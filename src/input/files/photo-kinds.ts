/** What photos may be, by their content and by the endings of their names. */
export const PHOTO_KINDS: readonly string[] = ["jpeg", "png", "webp", "avif"];
export const PHOTO_ENDINGS: readonly string[] = [".jpg", ".jpeg", ".png", ".webp", ".avif"];

/** Whether a file's name ends as those of photographs and scans do. */
export function isRasterName(name: string): boolean {
  return PHOTO_ENDINGS.includes(endingOf(name).toLowerCase());
}

/** How the name of a file ends, with its point: ".svg"; nothing where there is no point in it, or only as its first letter. */
export function endingOf(file: string): string {
  return /[^/](\.[^./]*)$/.exec(file)?.[1] ?? "";
}
