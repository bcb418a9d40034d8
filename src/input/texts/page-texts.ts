import type { AuthoredText } from "./authored-text.ts";

const FRONT_MATTER = /^---[ \t]*\r?\n[\s\S]*?\r?\n---[ \t]*(?:\r?\n|$)/;

/** The lines of a page's own text, below its front matter; `field` is what that is called. Pages show it, packets do not. */
export function pageTexts(file: string, text: string, field: string): AuthoredText[] {
  const matter = FRONT_MATTER.exec(text)?.[0] ?? "";
  const above = matter.split("\n").length - 1;
  return text
    .slice(matter.length)
    .split("\n")
    .flatMap((line, i) =>
      line.trim() === "" ? [] : [{ file, line: above + i + 1, column: 1, field, text: line.trim(), printed: false }],
    );
}
