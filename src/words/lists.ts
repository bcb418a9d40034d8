import { language } from "./language.ts";

const formats = new Map<string, Intl.ListFormat>();

/** Words as one phrase: `leaf height, leaf width, and thickness`. */
export function listOf(words: readonly string[]): string {
  const known = formats.get(language()) ?? new Intl.ListFormat(language(), { type: "conjunction" });
  formats.set(language(), known);
  return known.format(words);
}
