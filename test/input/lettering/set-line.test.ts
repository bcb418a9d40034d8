import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { clusterRings } from "../../../src/input/lettering/glyph-rings.ts";
import { setLine } from "../../../src/input/lettering/set-line.ts";
import { openTypeface } from "../../../src/input/lettering/typeface.ts";
import { overlap, ringRaster } from "../layers/raster.ts";
import { fontFile, skiaRaster } from "./skia.ts";

/** Above 256 pixels Skia draws letters as their outlines, without hints and contrast. */
const SIZE = 260;
const LITERATA = "literata-latin-600-normal.woff";
const SANS = "source-sans-3-latin-700-normal.woff";
const HEBREW = "noto-sans-hebrew-hebrew-400-normal.woff";
const HEBREW_2 = "noto-sans-hebrew-hebrew-400-normal.woff2";
const [HEIGHT, LEFT, BASELINE] = [400, 20, 290];

const widthOf = (advance: number) => Math.ceil(advance) + 2 * LEFT;

function set(text: string, fonts: readonly string[], spacing = 0) {
  const opened = fonts.map((name) => openTypeface(readFileSync(fontFile(name)), 400)!);
  const line = setLine(text, opened, spacing);
  const rings = line.clusters.flatMap((cluster) =>
    clusterRings(cluster, [SIZE, 0, 0, SIZE, cluster.x * SIZE, 0], 0.01),
  );
  return { rings, advance: line.advance * SIZE };
}

describe("setLine(text, fonts, spacing) beside what Skia draws", () => {
  it.each<[string, string, readonly string[]]>([
    ["pairs that are kerned", "AVATo Ty. LT", [LITERATA]],
    ["ligatures", "office fish", [LITERATA]],
    ["figures and signs", "27 · 06 — “Moon”", [SANS]],
    ["letters with marks", "Über Ågård çà", [SANS]],
    ["Hebrew", "שלום עולם", [HEBREW]],
    ["a WOFF2 file", "שלום עולם", [HEBREW_2]],
    ["Hebrew with points", "בְּרֵאשִׁית", [HEBREW]],
    ["Hebrew amid Latin", "Moon ירח at 27", [LITERATA, HEBREW]],
    ["Latin amid Hebrew", "ירח Moon 27 לילה", [HEBREW, LITERATA]],
    ["Latin and Greek", "Moon Σελήνη", [LITERATA, "literata-greek-600-normal.woff"]],
    ["Cyrillic", "Луна и море", ["literata-cyrillic-600-normal.woff", LITERATA]],
  ])("%s", async (_, text, fonts) => {
    const { rings, advance } = set(text, fonts);
    const width = widthOf(advance);
    const theirs = skiaRaster(fonts.map(fontFile), [width, HEIGHT], (context, families) => {
      context.font = `${SIZE}px ${families}`;
      // A line runs as its first letter does.
      context.direction = /^\p{Script=Hebrew}/u.test(text) ? "rtl" : "ltr";
      context.textAlign = "left";
      context.fillText(text, LEFT, BASELINE);
    });
    const ours = await ringRaster([{ rings, rule: "nonzero" }], [-LEFT, -BASELINE, width, HEIGHT], [width, HEIGHT]);
    expect(overlap(ours, theirs)).toBeGreaterThan(0.98);
  });

  it("spaces letters, and then without ligatures", async () => {
    const { rings, advance } = set("office", [LITERATA], 0.25);
    const width = widthOf(advance);
    const theirs = skiaRaster([fontFile(LITERATA)], [width, HEIGHT], (context, families) => {
      context.font = `${SIZE}px ${families}`;
      context.letterSpacing = `${0.25 * SIZE}px`;
      context.fillText("office", LEFT, BASELINE);
    });
    const ours = await ringRaster([{ rings, rule: "nonzero" }], [-LEFT, -BASELINE, width, HEIGHT], [width, HEIGHT]);
    expect(overlap(ours, theirs)).toBeGreaterThan(0.98);
  });

  it("draws the same letters from WOFF and WOFF2", async () => {
    const [one, two] = [LITERATA, LITERATA.replace(".woff", ".woff2")].map((file) => set("Waffle & co.", [file]));
    expect(two!.advance).toBeCloseTo(one!.advance, 6);
    const width = widthOf(one!.advance);
    const [a, b] = await Promise.all(
      [one!, two!].map(({ rings }) =>
        ringRaster([{ rings, rule: "nonzero" }], [-LEFT, -BASELINE, width, HEIGHT], [width, HEIGHT]),
      ),
    );
    expect(overlap(a!, b!)).toBeGreaterThan(0.999);
  });
});
