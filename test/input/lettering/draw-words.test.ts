import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { boxOf } from "../../../src/core/geometry/box.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { drawWords } from "../../../src/input/lettering/draw-words.ts";
import type { WordFields } from "../../../src/input/lettering/schema.ts";
import { inFolder } from "../kit/kit-folders.ts";
import { overlap, ringRaster } from "../layers/raster.ts";
import { fontFile, skiaRaster } from "./skia.ts";

const LITERATA = "literata-latin-600-normal.woff";
const SIZE = 270;

/** Words with fonts beside them: files of packages by the names under which they lie in the kit’s folder. */
function words(
  lines: readonly string[],
  style: Partial<WordFields> = {},
  fonts: Readonly<Record<string, string>> = {},
) {
  return inFolder((base) => {
    const folder = join(base, "kit");
    mkdirSync(folder);
    for (const [name, file] of Object.entries(fonts)) copyFileSync(fontFile(file), join(folder, name));
    writeFileSync(join(folder, "broken.ttf"), "\0\x01\0\0 and then no font");
    return drawWords(
      lines.map((text, i) => ({ text, level: i + 1 })),
      style,
      { at: ["picture"], kit: { base, folder }, fonts: [] },
    );
  });
}

function problemOf(make: () => unknown) {
  try {
    make();
  } catch (error) {
    if (error instanceof ProblemError) return error.problems[0]!;
  }
  throw new Error("nothing is told");
}

const PIXELS = [1250, 1250] as const;

/** The middle of what is covered, in pixels. */
function centroid(raster: Float64Array): [number, number] {
  let [all, across, down] = [0, 0, 0];
  for (const [i, one] of raster.entries()) {
    all += one;
    across += one * ((i % PIXELS[0]) + 0.5);
    down += one * (Math.floor(i / PIXELS[0]) + 0.5);
  }
  return [across / all, down / all];
}

/** Overlap of words with what Skia draws at the same size round the middle of its canvas: the middles of both are laid on each other. */
async function beside({ shapes }: ReturnType<typeof words>, draw: Parameters<typeof skiaRaster>[2]): Promise<number> {
  const theirs = skiaRaster([fontFile(LITERATA)], PIXELS, (context, family) => {
    context.font = `${SIZE}px ${family}`;
    context.translate(PIXELS[0] / 2, PIXELS[1] / 2);
    draw(context, family);
  });
  const size = [PIXELS[0] / SIZE, PIXELS[1] / SIZE] as const;
  const first = centroid(await ringRaster(shapes, [-0.5, -0.5, ...size], PIXELS));
  const [x, y] = centroid(theirs);
  const corner = [-0.5 - (x - first[0]) / SIZE, -0.5 - (y - first[1]) / SIZE] as const;
  return overlap(await ringRaster(shapes, [...corner, ...size], PIXELS), theirs);
}

describe("drawWords(lines, style, place)", () => {
  it("fills its canvas from edge to edge", () => {
    const { width, height, shapes } = words(["Moon"]);
    const { left, top, right, bottom } = boxOf(shapes.flatMap(({ rings }) => rings));
    expect([left, top].map(Math.abs)).toEqual([0, 0]);
    expect([right, bottom]).toEqual([width, height]);
  });

  it.each(["left", "centre", "right"] as const)("sets several lines, aligned %s, each at its level", async (align) => {
    const drawn = words(["Lamp", "Sea"], { align, lineHeight: 1.1 });
    expect(drawn.shapes.map(({ level }) => level)).toEqual([1, 2]);
    const found = await beside(drawn, (context) => {
      const [longest, shorter] = ["Lamp", "Sea"].map((text) => context.measureText(text).width) as [number, number];
      const shift = { left: 0, centre: 0.5, right: 1 }[align] * (longest - shorter);
      context.fillText("Lamp", -longest / 2, 0);
      context.fillText("Sea", shift - longest / 2, 1.1 * SIZE);
    });
    expect(found).toBeGreaterThan(0.98);
  });

  // By hand: letters of a line bent over an arc, each turned about the middle of the circle.
  it.each([120, -120, 360])("bends a line over %d degrees", async (arc) => {
    const text = "MHM";
    const drawn = words([text], { arc });
    const found = await beside(drawn, (context) => {
      const advances = [...text].map((letter) => context.measureText(letter).width);
      const bent = (Math.abs(arc) * Math.PI) / 180;
      const radius = advances.reduce((sum, one) => sum + one, 0) / bent;
      let at = 0;
      for (const [i, letter] of [...text].entries()) {
        const angle = (at + advances[i]! / 2) / radius - bent / 2;
        context.save();
        context.rotate(arc > 0 ? angle : -angle);
        context.translate(-advances[i]! / 2, arc > 0 ? -radius : radius);
        context.fillText(letter, 0, 0);
        context.restore();
        at += advances[i]!;
      }
    });
    expect(found).toBeGreaterThan(0.98);
  });

  it("bends shorter lines round the same middle", () => {
    // By hand: at 180 degrees the longest line is a half circle, and a line above it has a radius that is larger by a line.
    const [upper, lower] = words(["..", "M".repeat(30)], { arc: 180, lineHeight: 2 }).shapes.map(({ rings }) =>
      boxOf(rings),
    );
    const dots = words([".."]);
    expect(lower!.top - upper!.bottom).toBeGreaterThan(2 - 1);
    expect(upper!.right - upper!.left).toBeCloseTo(dots.width, 1);
    expect((upper!.left + upper!.right) / 2).toBeCloseTo((lower!.left + lower!.right) / 2, 2);
  });

  it("takes the weight that is nearest", () => {
    const [light, bold] = [250, 900].map((weight) => words(["lll"], { weight }).width);
    expect(bold).toBeGreaterThan(light!);
    expect(words(["lll"], { weight: 230 })).toEqual(words(["lll"], { weight: 200 }));
  });

  it("takes a font file of the kit", () => {
    const own = words(
      ["ירח"],
      { font: "./letters.woff2" },
      { "letters.woff2": "noto-sans-hebrew-hebrew-400-normal.woff2" },
    );
    expect(own.shapes[0]!.rings.length).toBeGreaterThan(2);
  });

  it.each<[string, readonly string[], Partial<WordFields>, string, RegExp]>([
    ["letters that the font lacks", ["Moon 月"], {}, "text", /月.*U\+6708/],
    ["letters outside a font file", ["Moon"], { font: "a.woff" }, "text", /M.*U\+004D/],
    ["an unknown font", ["Moon"], { font: "cursive" }, "font", /cursive/],
    ["a font that is not there", ["Moon"], { font: "b.ttf" }, "font", /b\.ttf/],
    ["a font outside the folder", ["Moon"], { font: "../b.ttf" }, "font", /outside/],
    ["a broken font", ["Moon"], { font: "broken.ttf" }, "font", /broken\.ttf/],
    ["a weight of a font with one", ["ירח"], { font: "a.woff", weight: 700 }, "weight", /700/],
    ["no letter", [" ", ""], {}, "text", /without a letter/],
    ["an arc too strong for its lines", ["Moon", "a", "b", "c"], { arc: 300 }, "arc", /300/],
  ])("tells of %s", (_, lines, style, field, given) => {
    const fonts = { "a.woff": "noto-sans-hebrew-hebrew-400-normal.woff" };
    const told = problemOf(() => words(lines, style, fonts));
    expect(told.at).toEqual(["picture", field]);
    expect(told.given).toMatch(given);
  });
});
