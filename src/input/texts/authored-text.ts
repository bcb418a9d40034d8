/** A text that someone wrote for the site, with its place. */
export interface AuthoredText {
  /** Path of the file as its author knows it, relative to the project. */
  readonly file: string;
  /** Both from 1. */
  readonly line: number;
  readonly column: number;
  /** As messages name it: `levels[2].name`; of a page's own text what that is called. */
  readonly field: string;
  readonly text: string;
  /** Whether it is printed in packets, and not only shown on pages. */
  readonly printed: boolean;
}
