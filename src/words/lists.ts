import { language } from "./language.ts";

/** Words as a list in the language's own writing: `card, glue and string`. */
export function listed(words: Iterable<string>): string {
  return new Intl.ListFormat(language(), { type: "conjunction", style: "long" }).format(words);
}

/** Words as a list of facts, without a last "and": `card, glue, string`. */
export function enumerated(words: Iterable<string>): string {
  return new Intl.ListFormat(language(), { type: "unit", style: "short" }).format(words);
}
