import * as say from "../../words/messages.ts";
import { shortened } from "../../words/printable.ts";

/** Letters of a name or value, and names of a list, that a message shows: files may hold millions of both. */
const MOST_LETTERS = 200;
const MOST_NAMES = 30;

/** A value as a message shows it. */
export function shortValue(text: string): string {
  return shortened(text, MOST_LETTERS);
}

/** The first of some names, and how many more there are. */
export function nameList(names: readonly string[]): string {
  const shown = names.slice(0, MOST_NAMES).map((name) => shortened(name, 60));
  const list = shown.join(", ");
  return names.length > MOST_NAMES ? say.checkMoreNames({ names: list, more: names.length - MOST_NAMES }) : list;
}
