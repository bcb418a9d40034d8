import { language } from "./language.ts";

/** `a, b and c` as the language joins a list. */
export function listText(items: readonly string[]): string {
  return new Intl.ListFormat(language(), { type: "conjunction" }).format(items);
}

/** `a, b, c` as the language writes things side by side. */
export function rowText(items: readonly string[]): string {
  return new Intl.ListFormat(language(), { type: "unit" }).format(items);
}
