import { setLanguage } from "./language.ts";
import { type Arguments, type Catalogue, fill } from "./message.ts";

let catalogue: Catalogue = {};

/**
 * Sets the words of this process: a site speaks one language. Pages do not use this: their scripts carry the few messages
 * that they need (see build/bundle/words-plugin.ts).
 */
export function speak(words: Catalogue, tag: string): void {
  catalogue = words;
  setLanguage(tag);
}

/** A message of the catalogue in force. @throws Error where it has no such message: `speak` was not called, or messages.ts is out of step */
export function say(id: string, args: Arguments = {}): string {
  const pattern = catalogue[id];
  if (!pattern) throw new Error(`no message "${id}" in the words in force`);
  return fill(pattern, args);
}
