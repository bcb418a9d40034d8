import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readLanguage } from "../../src/input/words/read-words.ts";
import { glossary } from "../../src/words/glossary.ts";
import type { MessageParts } from "../../src/words/message.ts";

/** A message as it may come out: each way through its choices, with a word for each argument. */
function ways(pattern: MessageParts): string[] {
  return pattern.reduce<string[]>(
    (begun, piece) => {
      if (typeof piece === "string") return begun.map((text) => text + piece);
      if ("arg" in piece) return begun.map((text) => `${text}7`);
      const ends = [...Object.values(piece.of), piece.other].flatMap(ways);
      return begun.flatMap((text) => ends.map((end) => text + end));
    },
    [""],
  );
}

const MESSAGES = readLanguage(join(import.meta.dirname, "../.."), "en").flatMap(({ id, file, pattern }) =>
  [...new Set(ways(pattern))].map((text) => ({ id, file, text })),
);
const where = (is: (text: string) => boolean, of = MESSAGES): string[] =>
  of.filter(({ text }) => is(text)).map(({ id, text }) => `${id}: ${text}`);

/** Texts to authors quote what is typed in a file, with the quotes that are typed there. */
const TYPED = /\/(check|front-matter|fields|layers|motifs|picture-files|pictures|raster|selecting)\.ftl$/;
const OF_AUTHORS = /-(given|allowed|do-author)$|^print-no-setting$/;

/** Words that would mean the same as a term of the glossary. */
const OTHER_WORDS =
  /\b(spans?|tiles?|absorbed|front covers?|back covers?|given to a neighbour|slits?|lost lea(f|ves))\b/i;

/** Says what it means by another word. */
const EXPLAINED = ["term-cut-meaning"];

describe("the English words", () => {
  it("have typographic apostrophes, quotes and dots, and no space before %", () => {
    expect(where((text) => /\p{L}'|'\p{L}|\.\.\.|\d %/u.test(text))).toEqual([]);
    const shown = MESSAGES.filter(({ id, file }) => !TYPED.test(file) && !OF_AUTHORS.test(id));
    expect(where((text) => text.includes('"') && !text.includes('"solve"'), shown)).toEqual([]);
  });

  it("have no sentence of more than 25 words", () => {
    const longest = (text: string): number =>
      Math.max(
        ...text
          .split(/(?<=[.?!:;])\s+/)
          .map((sentence) => sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length),
      );
    expect(where((text) => longest(text) > 25)).toEqual([]);
  });

  it("call a thing by its one name", () => {
    expect(
      where(
        (text) => OTHER_WORDS.test(text),
        MESSAGES.filter(({ id }) => !EXPLAINED.includes(id)),
      ),
    ).toEqual([]);
  });

  it("use every term of the glossary outside it", () => {
    const said = MESSAGES.filter(({ id }) => !id.startsWith("term-") && !id.startsWith("glossary-")).map(({ text }) =>
      text.toLowerCase(),
    );
    const unused = glossary().filter(
      ({ forms }) => !forms.some((form) => said.some((text) => text.includes(form.toLowerCase()))),
    );
    expect(unused.map(({ id }) => id)).toEqual([]);
  });
});
