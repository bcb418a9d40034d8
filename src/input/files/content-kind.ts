/** What a file is by what it begins with, whatever its name says. */
export type ContentKind =
  | "avif"
  | "bmp"
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
const BEGINNINGS: readonly (readonly [ContentKind, at: number, begins: RegExp])[] = [
  ["png", 0, /^\x89PNG\r\n\x1a\n/],
  ["jpeg", 0, /^\xff\xd8\xff/],
  ["gif", 0, /^GIF8[79]a/],
  ["webp", 0, /^RIFF[\s\S]{4}WEBP/],
  ["avif", 4, /^ftypavi[fs]/],
  ["heic", 4, /^ftyp(hei[cxms]|hev[cx]|mif1|msf1)/],
  ["tiff", 0, /^(II\*\0|MM\0\*)/],
  ["bmp", 0, /^BM[\s\S]{4}\0\0\0\0/],
  ["gzip", 0, /^\x1f\x8b/],
  ["zip", 0, /^PK(\x03\x04|\x05\x06)/],
  ["office", 0, /^\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1/],
  ["pdf", 0, /^%PDF-/],
  ["postscript", 0, /^(%!PS|\xc5\xd0\xd3\xc6)/],
  ["svg", 0, /^(\xef\xbb\xbf)?\s*(<\?xml[\s\S]*?\?>\s*)?(<!--[\s\S]*?-->\s*)*(<!DOCTYPE svg[\s\S]*?>\s*)?<(\w+:)?svg[\s>/]/],
];

/** How much of a file its beginning is, in bytes. */
export const BEGINNING = 4096;

/** What a file is; undefined for plain text and for kinds that nobody takes for a picture or a text. */
export function contentKind(bytes: Buffer): ContentKind | undefined {
  const head = bytes.subarray(0, BEGINNING).toString("latin1");
  return BEGINNINGS.find(([, at, begins]) => begins.test(head.slice(at)))?.[0];
}
