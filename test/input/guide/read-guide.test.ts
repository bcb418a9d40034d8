import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import { readGuide } from "../../../src/input/guide/read-guide.ts";
import { inFolder } from "../kit/kit-folders.ts";

/** The guide of a language in a project with these files below content/guide. */
function read(files: Readonly<Record<string, string>>, language = "en") {
  return inFolder((base) => {
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(base, "content/guide", name)), { recursive: true });
      writeFileSync(join(base, "content/guide", name), text);
    }
    const { made, messages } = readGuide(base, language);
    return { made, messages: messages.map(formatMessage) };
  });
}

const page = (title: string, order: number, body = "Text.") =>
  `---\ntitle: ${title}\nsummary: A line.\norder: ${order}\n---\n${body}\n`;

describe("readGuide(base, language)", () => {
  it("reads the pages in the order that they state", () => {
    const { made, messages } = read({ "en/b.md": page("First", 1), "en/a.md": page("Second", 2) });
    expect(messages).toEqual([]);
    expect(made.map(({ name, title, kind }) => [name, title, kind])).toEqual([
      ["b", "First", "chapter"],
      ["a", "Second", "chapter"],
    ]);
  });

  it("takes the English page where the language has none, page by page, and says which it is", () => {
    const files = { "en/a.md": page("A", 1), "en/b.md": page("B", 2), "nl/b.md": page("B in nl", 2) };
    expect(read(files, "nl-BE").made.map(({ title, language }) => [title, language])).toEqual([
      ["A", "en"],
      ["B in nl", "nl"],
    ]);
    expect(read(files, "en-GB").made.map(({ title }) => title)).toEqual(["A", "B"]);
  });

  it("is empty where there is no guide", () => {
    expect(read({})).toEqual({ made: [], messages: [] });
  });

  it("parts a page at its tables", () => {
    const body = "Before.\n\n<!-- reference: kit -->\n\nBetween.\n\n<!--reference: books-->\n\n<!-- figure: leaf -->\n";
    expect(read({ "en/a.md": page("A", 1, body).replaceAll("\n", "\r\n") }).made[0]!.passages).toEqual([
      { markdown: "Before.\n" },
      { reference: "kit" },
      { markdown: "\nBetween.\n" },
      { reference: "books" },
      { figure: "leaf" },
    ]);
  });

  it.each<[string, string, RegExp]>([
    ["no front matter", "# A page\n", /^content\/guide\/en\/a\.md:1:1 {2}front matter: no front matter; allowed: /],
    [
      "a misspelt key",
      page("A", 1).replace("summary", "sumary"),
      /^content\/guide\/en\/a\.md:3:1 {2}sumary: unknown key "sumary"; allowed: title, summary, order, kind; do: write "summary"$/,
    ],
    ["an order that is none", page("A", 0), /:4:1 {2}order: given 0; allowed: .* 1 to 99; do: correct this value$/],
    [
      "another kind",
      page("A", 1).replace("order: 1", "order: 1\nkind: story"),
      /:5:1 {2}kind: given "story"; allowed: .*chapter, reference/,
    ],
    [
      "a table that there is none of",
      page("A", 1, "Text.\n\n<!-- reference: kitt -->"),
      /^content\/guide\/en\/a\.md:8:1 {2}reference: given "kitt"; allowed: one of these names: kit, class, books, settings, catalogue, cautions, guide; do: correct the name$/,
    ],
    [
      "a drawing that there is none of",
      page("A", 1, "<!-- figure: book -->"),
      /:6:1 {2}figure: given "book"; allowed: one of these names: measure, leaf; do: correct the name$/,
    ],
  ])("tells of %s with place, and reads the others", (_, text, message) => {
    const { made, messages } = read({ "en/a.md": text, "en/b.md": page("B", 2) });
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(message);
    expect(made.map(({ name }) => name)).toEqual(["b"]);
  });
});
