import { copyFileSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { NamedFont } from "../../../src/core/site-settings.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { ownFonts } from "../../../src/input/fonts/own-fonts.ts";
import { drawWords, type SetWords } from "../../../src/input/lettering/draw-words.ts";
import type { WordFields } from "../../../src/input/lettering/schema.ts";
import { inFolder } from "../kit/kit-folders.ts";
import { fontFile } from "./skia.ts";

const hebrew = (weight: number): string => `noto-sans-hebrew-hebrew-${weight}-normal.woff2`;
const WORDS = "ירח";

/** Words in a site whose settings name a light and a bold file of one font, and which also lie beside the kit. */
function words(style: Partial<WordFields>): SetWords {
  return inFolder((base) => {
    const folder = join(base, "kit");
    mkdirSync(folder);
    mkdirSync(join(base, "content/fonts"), { recursive: true });
    const named = [300, 800].map((weight): NamedFont => {
      copyFileSync(fontFile(hebrew(weight)), join(folder, `${weight}.woff2`));
      copyFileSync(fontFile(hebrew(weight)), join(base, `content/fonts/${weight}.woff2`));
      return { file: `${weight}.woff2`, name: "Quay Letters", licence: undefined };
    });
    const place = { at: ["picture"], kit: { base, folder }, fonts: ownFonts(base, named) };
    return drawWords([{ text: WORDS, level: 1 }], style, place);
  });
}

describe("words in a font of the site's settings", () => {
  it("are those that the same file sets beside the kit, in the weight that is nearest", () => {
    const [light, bold] = [words({ font: "300.woff2" }), words({ font: "800.woff2" })];
    expect(light).not.toEqual(bold);
    expect(words({ font: "Quay Letters", weight: 200 })).toEqual(light);
    expect(words({ font: "Quay Letters", weight: 400 })).toEqual(light);
    expect(words({ font: "quay letters ", weight: 600 })).toEqual(bold);
  });

  it("are 600 bold where nothing is said", () => {
    expect(words({ font: "Quay Letters" })).toEqual(words({ font: "800.woff2" }));
  });

  it("are told of with the names there are where the font is none", () => {
    expect(() => words({ font: "Quay" })).toThrow(ProblemError);
    try {
      words({ font: "Quay" });
    } catch (error) {
      const [problem] = (error as ProblemError).problems;
      expect(problem).toMatchObject({ at: ["picture", "font"], given: '"Quay" is no font' });
      expect(problem!.allowed).toContain("literata, source-sans-3, Quay Letters, or a font file beside index.md");
    }
  });
});
