import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";

const FOLDER = join(import.meta.dirname, "../../content/guide/en");

/** Paragraphs, items, headings and cells of a page as plain text, code as one word. */
function texts(file: string): string[] {
  const body = readFileSync(join(FOLDER, file), "utf8")
    .replace(/^---\n.*?^---$/ms, "")
    .replace(/^<!--.*-->$/gm, "");
  return new MarkdownIt()
    .parse(body, {})
    .filter((token) => token.type === "inline")
    .map((token) =>
      token
        .children!.map((child) =>
          child.type === "code_inline" ? "code" : child.type === "softbreak" ? " " : child.content,
        )
        .join(""),
    );
}

const PAGES = readdirSync(FOLDER).map((file) => [file, texts(file)] as const);

/** Words that would mean the same as a term of the glossary. */
const OTHER_WORDS = /\b(spans?|tiles?|absorbed|front covers?|back covers?|slits?|lost lea(f|ves))\b/i;

describe.each(PAGES)("the guide's %s", (_, all) => {
  it("has no sentence of more than 25 words", () => {
    const sentences = all.flatMap((text) => text.split(/(?<=[.?!:;])\s+/));
    expect(sentences.length).toBeGreaterThan(3);
    expect(
      sentences.filter((one) => one.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length > 25),
    ).toEqual([]);
  });

  it("has typographic quotes and apostrophes, and calls a thing by its one name", () => {
    expect(all.filter((text) => /["']|\.\.\.|\d %/.test(text))).toEqual([]);
    expect(all.filter((text) => OTHER_WORDS.test(text) && text !== "absorbed")).toEqual([]);
  });
});
