import type { AuthoredText } from "./authored-text.ts";

/** Shorter texts stand in many places by chance, in letters. */
const TELLING = 4;

/**
 * The authored texts that stand in what was printed, the longest first: what an overflowing box says, or its beginning. Spaces
 * and places where a word may break do not count. Empty where nobody wrote what stands there: the program itself did.
 */
export function textsWithin(texts: readonly AuthoredText[], printed: string): AuthoredText[] {
  const whole = bare(printed);
  const within = texts.filter(({ text }) => {
    const own = bare(text);
    return own.length >= TELLING && (whole.includes(own) || (whole.length >= TELLING && own.startsWith(whole)));
  });
  return within.toSorted((a, b) => b.text.length - a.text.length);
}

/** A text without what the printing changes in it. */
function bare(text: string): string {
  return text.normalize("NFC").replace(/[\s\p{Default_Ignorable_Code_Point}]+/gu, "");
}
