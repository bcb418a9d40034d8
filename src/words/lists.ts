import { language } from "./language.ts";

/** `a, b and c` as the language joins a list. */
export function listText(items: readonly string[]): string {
  return new Intl.ListFormat(language(), { type: "conjunction" }).format(items);
}
