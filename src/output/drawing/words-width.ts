/** A letter's width as a share of its height in usual words, on the wide side. */
const LETTER = 0.5;

/** Wide letters in the packets' text face: capitals, some small ones, and scripts whose letters are as wide as they are high. */
const WIDE = /[%@mw—…жмфшщыю\p{Lu}\u2e80-\u{10ffff}]/gu;
/** Letters of other scripts than Latin are a little wider. */
const OTHER = /[^\0-\u02af]/g;
/** About how wide words are drawn, in the unit of the letters' height. Usual words have a wide letter in ten, which narrow ones make up for. */
export function wordsWidth(words: string, size: number): number {
  const { length } = words;
  const more = 0.41 * count(words, WIDE) + 0.14 * count(words, OTHER) - 0.1 * length - 0.5;
  return (length * LETTER + Math.max(0, more)) * size;
}

/** How many letters of usual width are as wide as these words. */
export function usualLetters(words: string): number {
  return wordsWidth(words, 1 / LETTER);
}

/** The letters' height, or as much less as words need to be no wider than `room`. */
export function sizeWithin(room: number, words: string, size: number): number {
  return Math.min(size, (size * room) / wordsWidth(words, size));
}

/** Letters are printed no lower, mm: 7 pt. */
const LEAST = 2.47;

/** SVG presentation of letters that are set into a room. */
type SetLetters = { readonly "font-size": number } & Readonly<Record<string, string | number>>;

/** How words are set into a room: lower where it is short of them, and below 7 pt narrower instead. */
export function lettersWithin(room: number, words: string, size: number): SetLetters {
  const lower = sizeWithin(room, words, size);
  return lower < LEAST
    ? { "font-size": LEAST, textLength: room, lengthAdjust: "spacingAndGlyphs" }
    : { "font-size": lower };
}

/** Words in lines no wider than `width`: as many on a line as it has room for; a longer word stands alone. */
export function linesWithin(width: number, words: string, size: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && wordsWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function count(words: string, kind: RegExp): number {
  return words.match(kind)?.length ?? 0;
}
