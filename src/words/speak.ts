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
  return fill(pattern, isolated(args));
}

/** Letters of scripts that run from right to left. */
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** Words that run the other way do not turn those around them (the isolates of Unicode's bidirectional algorithm). */
function isolated(args: Arguments): Arguments {
  const whole = Object.entries(args).map(([name, value]) => {
    const turns = typeof value === "string" && RIGHT_TO_LEFT.test(value) && !value.includes("\u2068");
    return [name, turns ? `\u2068${value}\u2069` : value] as const;
  });
  return Object.fromEntries(whole);
}
