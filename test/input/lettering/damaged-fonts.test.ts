import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { drawWords } from "../../../src/input/lettering/draw-words.ts";
import { sfntOf } from "../../../src/input/lettering/sfnt.ts";
import { fc } from "../../seed.ts";
import { inFolder } from "../kit/kit-folders.ts";
import { fontFile } from "./skia.ts";

const NAME = "noto-sans-hebrew-hebrew-400-normal.woff";
const woff = readFileSync(fontFile(NAME));
const FONTS = { "a.ttf": Buffer.from(sfntOf(woff)), "a.woff": woff, "a.woff2": readFileSync(fontFile(`${NAME}2`)) };

/** Whether words can be set in a font; else it is told of at its field or at the words. */
function canBeSet(name: string, bytes: Buffer): boolean {
  return inFolder((base) => {
    const folder = join(base, "kit");
    mkdirSync(folder);
    writeFileSync(join(folder, name), bytes);
    try {
      drawWords([{ text: "ירח", level: 1 }], { font: name }, { at: ["picture"], kit: { base, folder }, fonts: [] });
      return true;
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      expect(error.problems[0]!.at).toEqual(["picture", expect.stringMatching(/^(font|text)$/)]);
      return false;
    }
  });
}

describe.each(Object.entries(FONTS))("a font file %s", (name, sound) => {
  it("is set when it is sound", () => {
    expect(canBeSet(name, sound)).toBe(true);
  });

  it("is set or told of where bytes of it are changed", () => {
    const change = fc.tuple(fc.nat({ max: sound.length - 1 }), fc.nat({ max: 255 }));
    const early = fc.tuple(fc.nat({ max: 400 }), fc.nat({ max: 255 }));
    fc.assert(
      fc.property(fc.array(fc.oneof(change, early), { minLength: 1, maxLength: 12 }), (changes) => {
        const bytes = Buffer.from(sound);
        for (const [at, value] of changes) bytes[at] = value;
        canBeSet(name, bytes);
      }),
      { numRuns: 60 },
    );
  });

  it("is told of where it is cut short", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (length) => {
        expect(canBeSet(name, sound.subarray(0, length))).toBe(false);
      }),
      { numRuns: 20 },
    );
  });
});
