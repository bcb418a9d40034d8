/** A letter's width as a share of its height in usual words, on the wide side. */
const LETTER = 0.5;

/** Widths of letters as shares of their height, by kinds: none is wider in the packets' text face (its own widths, in a test). */
const SHARES: readonly (readonly [RegExp, number])[] = [
  [/\p{M}/u, 0],
  [/ /, 0.2],
  [/[!'’,.:;Iijl|]/, 0.33],
  [/[-()[\]frt]/, 0.39],
  [/[%&@MWŴmwŵ]/, 0.9],
  [/[—…ÆŒæœ¼½¾ŉφψωώЉЊЖМФШЩЫЮжмфшщыюљњ]/, 0.97],
  [/\p{Lu}/u, 0.78],
];
/** From here on letters are as wide as they are high: scripts of East Asia, symbols, emoji. */
const SQUARE = 0x2e80;
/** Any other letter. */
const OTHER = 0.62;
/** By so much the kinds are too wide in words of all kinds: it counts where most letters are wide. */
const SPARE = 1;

/** About how wide words are drawn, in the unit of the letters' height. */
export function wordsWidth(words: string, size: number): number {
  let sum = 0;
  for (const letter of words) sum += shareOf(letter);
  return Math.max(words.length * LETTER, sum - SPARE) * size;
}

/** How many letters of usual width are as wide as these words. */
export function usualLetters(words: string): number {
  return wordsWidth(words, 1 / LETTER);
}

/** The letters' height, or as much less as words need to be no wider than `room`. */
export function sizeWithin(room: number, words: string, size: number): number {
  return Math.min(size, (size * room) / wordsWidth(words, size));
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

function shareOf(letter: string): number {
  if (letter.codePointAt(0)! >= SQUARE) return 1;
  return SHARES.find(([kind]) => kind.test(letter))?.[1] ?? OTHER;
}
