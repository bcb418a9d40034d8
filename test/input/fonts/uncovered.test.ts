import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { coverage } from "../../../src/build/fonts/coverage.ts";
import { openFont } from "../../../src/input/fonts/font-file.ts";
import { uncoveredIn, uncoveredMessages } from "../../../src/input/fonts/uncovered.ts";

const HEBREW = createRequire(import.meta.url).resolve(
  "@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff2",
);

const covers = coverage([]);
const missing = (text: string): string => uncoveredIn(text, covers).join("");

describe("uncoveredIn(text, covers)", () => {
  // Pangrams and proverbs that hold every letter of their language's alphabet, in capitals, too.
  it.each([
    ["Polish", "Pchnąć w tę łódź jeża lub ośm skrzyń fig"],
    ["Czech", "Příliš žluťoučký kůň úpěl ďábelské ódy"],
    ["Turkish", "Pijamalı hasta yağız şoföre çabucak güvendi; İĞŞ"],
    ["Vietnamese", "Do bạch kim rất quý nên sẽ dùng để lắp vô xương; ữ ậ Ễ Ỷ đ"],
    ["Greek", "Ξεσκεπάζω την ψυχοφθόρα βδελυγμία; ΐ ΰ Ώ ἀρχή ὕδωρ ᾧ"],
    ["Russian", "Съешь же ещё этих мягких французских булок, да выпей чаю"],
    ["Ukrainian", "Жебракують філософи при ґанку церкви в Гадячі, ще й шатро їхнє п’яне знаємо"],
    ["Romanian", "Gheorghe, obezul, a reușit să obțină jucându-se un flux în Quebec de o mie kilowațioră"],
    ["Welsh and German", "Ŵyr Ŷ ẁ; Falsches Üben von Xylophonmusik quält jeden größeren Zwerg ẞ"],
  ])("finds nothing in %s", (_, text) => {
    expect(missing(text)).toBe("");
    // Lower-case iota under a capital becomes a letter beside it (Unicode, SpecialCasing).
    expect(missing(text.toUpperCase())).toBe("");
  });

  it.each([
    ["Chinese", "月亮", "月亮"],
    ["Arabic", "قمر", "قمر"],
    ["Hebrew", "ירח", "ירח"],
    ["Devanagari", "चाँद", "चाँद"],
    [
      "emoji, without what joins and colours them",
      "Moon \u{1f319}\ufe0f \u{1f468}\u200d\u{1f469}",
      "\u{1f319}\u{1f468}\u{1f469}",
    ],
  ])("finds each letter once in %s", (_, text, expected) => {
    expect(missing(`${text} and ${text}`)).toBe(expected);
  });

  it("takes a letter with its marks as one, whichever way it is written", () => {
    expect(missing("e\u0301 a\u0328 ồ".normalize("NFD"))).toBe("");
    expect(missing("soft\u00adhyphen, zero\u200bwidth, no\u00a0break, tab\t, line\n")).toBe("");
  });

  it("finds nothing that a named font has", () => {
    const font = openFont(readFileSync(HEBREW))!;
    const both = coverage([{ name: "Hebrew", file: "h.woff2", target: "own-1.woff2", font }]);
    expect(uncoveredIn("ירח Moon 月", both)).toEqual(["月"]);
  });
});

describe("uncoveredMessages(texts, covers)", () => {
  it("says place, letters with their numbers, how many others, and what to do", () => {
    const text = { file: "content/kits/moon/index.md", line: 2, column: 8, field: "title", printed: true };
    const [one] = uncoveredMessages([{ ...text, text: "月と星の舟 over ice" }], covers);
    expect(one!.message).toMatchObject({ file: text.file, line: 2, column: 8, field: "title" });
    expect(one!.message.given).toBe(
      "“月” (U+6708), “と” (U+3068), “星” (U+661F) and 2 other characters, which no font of the site has",
    );
    expect(one!.message.remedy).toContain("content/fonts");
    expect(uncoveredMessages([{ ...text, text: "Moon" }], covers)).toEqual([]);
  });
});
