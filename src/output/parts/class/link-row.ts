import { rowText } from "../../../words/lists.ts";
import { type Html, rich } from "../markup.ts";

/** Links side by side, separated as the language writes a list. */
export function linkRow(links: readonly Html[]): Html {
  const named = Object.fromEntries(links.map((link, i) => [String(i), link]));
  return rich((texts: Readonly<Record<string, string>>) => rowText(links.map((_, i) => texts[i]!)), named);
}
