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

/** Every phrase between « and », with accents and 40 % longer. */
export function pseudoWords(words: Catalogue): Catalogue {
  return Object.fromEntries(
    Object.entries(words).map(([id, pattern]) => [id, SYMBOLS.test(id) ? pattern : pseudoPattern(pattern)]),
  );
}

function pseudoPattern(pattern: MessageParts): MessageParts {
  const length = lengthOf(pattern);
  return ["«", ...pattern.map(accented), padding(length), "»"];
}

function accented(piece: MessagePart): MessagePart {
  if (typeof piece === "string") return piece.replace(/[aeiouAEOU]/g, (letter) => ACCENTS[letter]!);
  if ("arg" in piece) return piece;
  const of = Object.fromEntries(Object.entries(piece.of).map(([key, pattern]) => [key, pattern.map(accented)]));
  return { ...piece, of, other: piece.other.map(accented) };
}

/** Letters of a message's own text, the longest way through its choices. */
function lengthOf(pattern: MessageParts): number {
  return pattern.reduce((sum, piece) => {
    if (typeof piece === "string") return sum + piece.length;
    if ("arg" in piece) return sum;
    return sum + Math.max(lengthOf(piece.other), ...Object.values(piece.of).map(lengthOf));
  }, 0);
}

/** Words of four letters, so that long phrases break as real ones do. */
function padding(length: number): string {
  const more = Math.ceil(length * 0.4);
  return length < 2 ? "" : " loong".repeat(Math.ceil(more / 6)).slice(0, Math.max(2, more));
}
