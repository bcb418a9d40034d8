/** What a terminal or a reader's eye would obey rather than show: controls, marks that turn the direction, halves of letters. */
const UNSEEN = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]|\p{Cs}/gu;

/** The marks that a message of ours puts around words of another direction. */
const ISOLATES = /[\u2068\u2069]/g;

/**
 * A text from outside as it can be shown: what would not be seen stands as its code, `\u001b`; lines stay where `lines` says so.
 * Marks around words of another direction go: who tells the text puts them again.
 */
export function printable(text: string, lines = false): string {
  return text.replace(ISOLATES, "").replace(UNSEEN, (sign) => (lines && sign === "\n" ? sign : codeOf(sign)));
}

function codeOf(sign: string): string {
  return `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;
}

/** The text itself, or its beginning with an ellipsis, `most` letters at most. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  // A letter takes one or two places of a string.
  const letters = [...text.slice(0, 2 * most + 2)];
  return letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : text;
}
