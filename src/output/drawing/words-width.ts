/** A letter's width as a share of its height in usual words, on the wide side. */
const LETTER = 0.5;

/** Letters that are narrow, wide, and wider than most, by the packets' text face. */
const NARROW = /[-!'’(),.:;Ifijlrt|]/;
const WIDE = /[%@MWmw—…ЖМФШЩЫЮжмфшщыю]/;
const CAPITAL = /\p{Lu}/u;
/** From here on letters are as wide as they are high: scripts of East Asia, symbols, emoji. */
const SQUARE = "\u2e80";
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

/** A letter's width as a share of its height. */
function shareOf(letter: string): number {
  if (letter === " ") return 0.2;
  if (NARROW.test(letter)) return 0.35;
  if (WIDE.test(letter)) return 0.9;
  if (letter >= SQUARE) return 1;
  return CAPITAL.test(letter) ? 0.78 : 0.62;
}
