import type { Catalogue, MessagePart, MessageParts } from "./message.ts";

/** The language that tests read a site in: English with every phrase marked and lengthened (BCP 47 region XA, private use). */
export const PSEUDO = "en-XA";

/** Symbols of units are the same in every language. */
const SYMBOLS = /^unit-/;

const ACCENTS: Readonly<Record<string, string>> = {
  a: "à",
  e: "é",
  i: "î",
  o: "ô",
  u: "ü",
  A: "Å",
  E: "É",
  O: "Ö",
  U: "Ü",
};

/**
 * Every phrase's own text between « and », with accents and 40 % longer. What stands in its arguments stays outside the
 * marks, so that a word handed over from elsewhere shows.
 */
export function pseudoWords(words: Catalogue): Catalogue {
  return Object.fromEntries(
    Object.entries(words).map(([id, pattern]) => [id, SYMBOLS.test(id) ? pattern : pattern.map(pseudoPiece)]),
  );
}

function pseudoPiece(piece: MessagePart): MessagePart {
  if (typeof piece === "string") return marked(piece);
  if ("arg" in piece) return piece;
  const pseudo = (pattern: MessageParts): MessageParts => pattern.map(pseudoPiece);
  const of = Object.fromEntries(Object.entries(piece.of).map(([key, pattern]) => [key, pseudo(pattern)]));
  return { ...piece, of, other: pseudo(piece.other) };
}

/** Spaces at the edges stay outside the marks; signs alone are no words. */
function marked(text: string): string {
  if (!/\p{L}/u.test(text)) return text;
  const own = text.trim();
  const accented = own.replace(/[aeiouAEOU]/g, (letter) => ACCENTS[letter]!);
  return text.replace(own, () => `«${accented}${padding(own.length)}»`);
}

/** Words of five letters, so that long phrases break as real ones do. */
function padding(length: number): string {
  const more = Math.ceil(length * 0.4);
  return length < 2 ? "" : " loong".repeat(Math.ceil(more / 6)).slice(0, Math.max(2, more));
}
