import { language } from "./language.ts";

/** Several things as the language lists them, with its word for “and” before the last. */
export function listed(items: readonly string[]): string {
  return new Intl.ListFormat(language(), { type: "conjunction" }).format(items);
}
