/** A letter's width as a share of its height, on the wide side. */
const LETTER = 0.5;

/** About how wide words are drawn, in the unit of the letters' height. */
export function wordsWidth(words: string, size: number): number {
  return words.length * LETTER * size;
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
