/** What bytes that are not UTF-8 seem to be. */
export type Encoding =
  | "UTF-16LE"
  | "UTF-16BE"
  | "UTF-32"
  | "Windows-1252"
  | "ISO-8859-1"
  /** Most of it is UTF-8. */
  | "damaged"
  | "binary";

/** How much of a file is looked at, in bytes. */
const SAMPLE = 65_536;

/** Tab and line ends. */
const IN_TEXTS: readonly number[] = [0x09, 0x0a, 0x0d];

/** The encoding that a byte order mark states, but UTF-8's. Source: the Unicode Standard, "Byte Order Mark". */
export function markedEncoding(bytes: Buffer): Encoding | undefined {
  const [a, b, c, d] = bytes;
  if (a === 0xff && b === 0xfe) return c === 0 && d === 0 ? "UTF-32" : "UTF-16LE";
  if (a === 0xfe && b === 0xff) return "UTF-16BE";
  return a === 0 && b === 0 && c === 0xfe && d === 0xff ? "UTF-32" : undefined;
}

/** Whether text stands in two bytes a letter without a mark: every other byte of Latin letters is 0. */
export function unmarkedUtf16(bytes: Buffer): Encoding | undefined {
  const pairs = Math.floor(Math.min(bytes.length, SAMPLE) / 2);
  if (pairs < 2) return undefined;
  let first = 0;
  let second = 0;
  for (let i = 0; i < pairs; i += 1) {
    if (bytes[2 * i] === 0) first += 1;
    if (bytes[2 * i + 1] === 0) second += 1;
  }
  if (second > 0.4 * pairs && first < 0.05 * pairs) return "UTF-16LE";
  return first > 0.4 * pairs && second < 0.05 * pairs ? "UTF-16BE" : undefined;
}

/** What bytes seem to be that hold one that is not UTF-8 and have no mark. */
export function seemingEncoding(bytes: Buffer): Encoding {
  const sample = bytes.subarray(0, SAMPLE);
  const text = sample.toString("latin1");
  const controls = sample.filter((byte) => byte < 0x20 && !IN_TEXTS.includes(byte)).length;
  if (controls > 0.01 * sample.length) return unmarkedUtf16(bytes) ?? "binary";
  const whole = text.match(/[\xc2-\xdf][\x80-\xbf]|[\xe0-\xef][\x80-\xbf]{2}|[\xf0-\xf4][\x80-\xbf]{3}/g) ?? [];
  const high = text.match(/[\x80-\xff]/g)?.length ?? 0;
  const inWhole = whole.reduce((sum, one) => sum + one.length, 0);
  if (inWhole > 0.5 * high) return "damaged";
  return /[\x80-\x9f]/.test(text) ? "Windows-1252" : "ISO-8859-1";
}
