/** A piece of a text, by where it begins and ends, that another text takes the place of. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

export function spliced(text: string, { from, to, put }: Splice): string {
  return text.slice(0, from) + put + text.slice(to);
}

/** Where the line begins that a place stands in. */
export function lineStart(text: string, at: number): number {
  return text.lastIndexOf("\n", at - 1) + 1;
}

/** Where the line ends that a place stands in, with its line end; a place behind a line end stands in the line before. */
export function lineEnd(text: string, at: number): number {
  if (at > 0 && text[at - 1] === "\n") return at;
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end + 1;
}

/** The line end of a text; of one without any, a line feed. */
export function lineEndOf(text: string): "\n" | "\r\n" {
  return /\r?\n/.exec(text)?.[0] === "\r\n" ? "\r\n" : "\n";
}
