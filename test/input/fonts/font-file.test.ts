import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createCanvas, GlobalFonts } from "@napi-rs/canvas";
import { describe, expect, it } from "vitest";
import { facesFor, isAsked } from "../../../src/build/fonts/faces.ts";
import { textWidth } from "../../../src/build/fonts/text-width.ts";
import { openFont } from "../../../src/input/fonts/font-file.ts";
import { wordsWidth } from "../../../src/output/drawing/words-width.ts";

const require = createRequire(import.meta.url);
const fileOf = (name: string): Buffer =>
  readFileSync(require.resolve(`@fontsource/source-sans-3/files/source-sans-3-${name}`));

// The alphabets of the Unicode Standard's code charts (unicode.org/charts): basic Greek and Coptic letters, Cyrillic U+0400
// to U+045F, Latin-1 and Latin Extended-A, Vietnamese U+1EA0 to U+1EF9. U+0378 and the like are not assigned.
const BLOCKS = [
  ["Latin-1", 0xa1, 0xff],
  ["Latin Extended-A", 0x100, 0x17f],
  ["Vietnamese", 0x1ea0, 0x1ef9],
  ["Greek", 0x386, 0x3ce],
  ["Cyrillic", 0x400, 0x45f],
] as const;

/** A letter that stands alone and is written one way only. */
const plain = (letter: string): boolean => /[^\p{M}]/u.test(letter) && letter.normalize("NFC") === letter;

describe("openFont(bytes)", () => {
  it("reads WOFF and WOFF2 alike", () => {
    const [first, second] = ["cyrillic-400-normal.woff", "cyrillic-400-normal.woff2"].map(
      (name) => openFont(fileOf(name))!,
    );
    expect([first!.kind, second!.kind]).toEqual(["woff", "woff2"]);
    for (const letter of "ЖжЩщ") {
      const code = letter.codePointAt(0)!;
      expect(first!.covers(code)).toBe(true);
      expect(first!.advance(code)).toBe(second!.advance(code));
    }
    expect(first!.covers("月".codePointAt(0)!)).toBe(false);
    expect(first!.advance("月".codePointAt(0)!)).toBeUndefined();
  });

  it("knows the weights of a static and of a variable font", () => {
    expect(openFont(fileOf("latin-600-normal.woff2"))!.weights).toEqual([600, 600]);
    const variable = require.resolve("@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2");
    expect(openFont(readFileSync(variable))!.weights).toEqual([200, 900]);
  });

  it("takes nothing else for a font", () => {
    const font = fileOf("latin-400-normal.woff2");
    for (const bytes of [Buffer.from(""), Buffer.from("<svg/>"), Buffer.from("ttcf\0\x01\0\0"), font.subarray(0, 4)])
      expect(openFont(bytes)).toBeUndefined();
    expect(openFont(Buffer.concat([font.subarray(0, 4), Buffer.alloc(500, 7)]))).toBeUndefined();
  });
});

/** Headings take these from the text face: the long s of old prints, and a letter of Macedonian textbooks. */
const TEXT_FACE = ["ſ", "Ѐ", "ѐ"];

describe("facesFor(use)", () => {
  const assigned = /\p{Assigned}/u;

  it.each(["site", "print"] as const)("has every letter of these blocks in each cut: %s", (use) => {
    const cuts = new Set(facesFor(use).map(({ family, weight }) => `${family} ${weight}`));
    for (const cut of cuts) {
      const faces = facesFor(use).filter(({ family, weight }) => `${family} ${weight}` === cut);
      const fonts = faces.map((face) => ({ face, font: openFont(readFileSync(face.source))! }));
      for (const [block, from, to] of BLOCKS) {
        const missing = Array.from({ length: to - from + 1 }, (_, i) => from + i).filter(
          (code) =>
            assigned.test(String.fromCodePoint(code)) &&
            /\p{L}/u.test(String.fromCodePoint(code)) &&
            !fonts.some(({ face, font }) => isAsked(face, code) && font.covers(code)),
        );
        const rare = cut.startsWith("Literata") ? TEXT_FACE : [];
        const letters = missing.map((code) => String.fromCodePoint(code));
        expect(
          letters.filter((letter) => !rare.includes(letter)),
          `${block} in ${cut}`,
        ).toEqual([]);
      }
    }
  });
});

describe("textWidth(text, setting, own)", () => {
  // Skia, by @napi-rs/canvas, measures the same files; kerning apart.
  it("agrees with an unrelated program on letters one by one", () => {
    for (const { family, weight, source, range, file } of facesFor("print")) {
      const alias = `measured-${file}`;
      GlobalFonts.register(readFileSync(source), alias);
      const context = createCanvas(10, 10).getContext("2d");
      context.font = `100px "${alias}"`;
      const font = openFont(readFileSync(source))!;
      for (let code = 0x41; code < 0x500; code += 7) {
        if (!isAsked({ range } as never, code) || !font.covers(code) || !plain(String.fromCodePoint(code))) continue;
        const letter = String.fromCodePoint(code);
        const measured = context.measureText(letter).width;
        expect(
          Math.abs(textWidth(letter, { family, weight, size: 100 }, []) - measured),
          `${letter} in ${file}`,
        ).toBeLessThan(0.6);
      }
    }
  });

  // Every letter of an alphabet in the usual mixture; capitals are the widest that people write.
  it.each([
    "The quick brown fox jumps over the lazy dog (12 345.67 mm)",
    "Falsches Üben von Xylophonmusik quält jeden größeren Zwerg",
    "Pchnąć w tę łódź jeża lub ośm skrzyń fig",
    "Do bạch kim rất quý nên sẽ dùng để lắp vô xương",
    "Ξεσκεπάζω την ψυχοφθόρα βδελυγμία",
    "Съешь же ещё этих мягких французских булок, да выпей чаю",
    "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
    "ШИРОКОЩЕКАЯЖЖЫЮШИРОКОЩЕКАЯЖЖЫЮ",
  ])("is no more than the drawings' estimate: %s", (text) => {
    for (const words of [text, text.toUpperCase()])
      for (const weight of ["400", "600", "700"]) {
        const width = textWidth(words, { family: "Source Sans 3", weight, size: 1 }, []);
        expect(width / wordsWidth(words, 1), `${words} ${weight}`).toBeLessThanOrEqual(1.04);
      }
  });
});
