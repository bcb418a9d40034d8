/** What a file is by what it begins with, whatever its name says. */
export type ContentKind =
  | "avif"
  | "gif"
  | "gzip"
  | "heic"
  | "jpeg"
  | "office"
  | "pdf"
  | "png"
  | "postscript"
  | "svg"
  | "tiff"
  | "webp"
  | "zip";

/** First bytes of each kind as Latin-1, and where they stand. Sources: the formats' own specifications. */
const BEGINNINGS: readonly (readonly [ContentKind, at: number, begins: string])[] = [
  ["png", 0, "\x89PNG\r\n\x1a\n"],
  ["jpeg", 0, "\xff\xd8\xff"],
  ["gif", 0, "GIF87a"],
  ["gif", 0, "GIF89a"],
  ["webp", 8, "WEBP"],
  ["avif", 4, "ftypavif"],
  ["avif", 4, "ftypavis"],
  ["heic", 4, "ftypheic"],
  ["heic", 4, "ftypheix"],
  ["heic", 4, "ftyphevc"],
  ["heic", 4, "ftypmif1"],
  ["heic", 4, "ftypmsf1"],
  ["tiff", 0, "II*\0"],
  ["tiff", 0, "MM\0*"],
  ["gzip", 0, "\x1f\x8b"],
  ["zip", 0, "PK\x03\x04"],
  ["zip", 0, "PK\x05\x06"],
  ["office", 0, "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"],
  ["pdf", 0, "%PDF-"],
  ["postscript", 0, "%!PS"],
  ["postscript", 0, "\xc5\xd0\xd3\xc6"],
];

/** Markup that holds an SVG element early on. */
const SVG = { begins: /^(?:\xef\xbb\xbf)?\s*</, holds: /<(?:\w+:)?svg[\s>/]/ };

/** How much of a file its beginning is, in bytes. */
export const BEGINNING = 4096;

/** What a file is; undefined for plain text and for kinds that nobody takes for a picture or a text. */
export function contentKind(bytes: Buffer): ContentKind | undefined {
  const head = bytes.subarray(0, BEGINNING).toString("latin1");
  const found = BEGINNINGS.find(([, at, begins]) => head.startsWith(begins, at))?.[0];
  return found ?? (SVG.begins.test(head) && SVG.holds.test(head) ? "svg" : undefined);
}
