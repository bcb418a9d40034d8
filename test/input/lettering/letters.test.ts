import { describe, expect, it } from "vitest";
import { boxOf } from "../../../src/core/geometry/box.ts";
import { letters } from "../../../src/input/lettering/letters.ts";
import { fontFile, skiaRaster } from "./skia.ts";

const STYLE = { families: ["Somebody", "source sans 3"], size: 40, weight: 400, italic: false };

describe("letters(text, style)", () => {
  it("runs from 0 as far as Skia measures, above and below the baseline", () => {
    let width = 0;
    skiaRaster([fontFile("source-sans-3-latin-400-normal.woff")], [8, 8], (context, families) => {
      context.font = `400px ${families}`;
      width = context.measureText("Typography").width / 10;
    });
    const set = letters("Typography", STYLE)!;
    expect(set.advance).toBeCloseTo(width, 1);
    const { top, bottom } = boxOf(set.rings);
    expect(top).toBeLessThan(-20);
    expect(bottom).toBeGreaterThan(5);
  });

  it("scales with the size", () => {
    const one = letters("Moon", STYLE)!.advance;
    expect(letters("Moon", { ...STYLE, size: 80 })!.advance).toBeCloseTo(2 * one, 9);
  });

  it("has italics of their own", () => {
    expect(letters("Moon", { ...STYLE, italic: true })!.advance).not.toBeCloseTo(letters("Moon", STYLE)!.advance, 2);
  });

  it.each([
    ["of families that are not at hand", "Moon", { ...STYLE, families: ["Somebody", "serif"] }],
    ["that the font lacks", "月", STYLE],
    ["of no size", "Moon", { ...STYLE, size: 0 }],
  ])("has no letters %s", (_, text, style) => {
    expect(letters(text, style)).toBeUndefined();
  });
});
