import { describe, expect, it } from "vitest";
import { LineField } from "../../../../src/core/geometry/line-field.ts";
import { wordsSpot } from "../../../../src/output/drawing/class/words-spot.ts";

/** A place 100 mm wide and 40 mm high whose upper left corner is at 10, 20. */
const PLACE = { left: 10, top: 20, right: 110, bottom: 60 };
const WORDS = { width: 30, height: 10 };

describe("a spot for words", () => {
  it("is the middle, level, where no line is near", () => {
    expect(wordsSpot(PLACE, new LineField(), WORDS)).toEqual({ x: 60, y: 40, upright: false });
  });

  it("is not moved by lines that pass the words, or the place", () => {
    const lines = [
      [
        [10, 34],
        [110, 34],
      ],
      [
        [60, 61],
        [60, 90],
      ],
    ] as const;
    expect(wordsSpot(PLACE, new LineField(lines), WORDS)).toEqual({ x: 60, y: 40, upright: false });
  });

  it("is above or below a level line through the middle, 5 mm from it or a step of 1.25 mm more", () => {
    const line = [
      [0, 40],
      [120, 40],
    ] as const;
    const spot = wordsSpot(PLACE, new LineField([line]), WORDS)!;
    expect(spot.upright).toBe(false);
    expect(Math.abs(spot.y - 40)).toBeGreaterThan(5);
    expect(Math.abs(spot.y - 40)).toBeLessThanOrEqual(6.25);
  });

  it("runs upward between upright lines that are 20 mm apart, too near for words 30 mm wide", () => {
    const places = [10, 30, 50, 70, 90, 110];
    const lines = places.map((x) => [[x, 20] as const, [x, 60] as const]);
    const spot = wordsSpot(PLACE, new LineField(lines), WORDS)!;
    expect(spot.upright).toBe(true);
    const free = places.map((x) => Math.abs(x - spot.x));
    expect(Math.min(...free)).toBeGreaterThan(5);
  });

  it("is nowhere where lines lie 8 mm apart both ways, or the words are wider than the place is wide or high", () => {
    const across = Array.from({ length: 6 }, (_, i) => [[10, 20 + 8 * i] as const, [110, 20 + 8 * i] as const]);
    const down = Array.from({ length: 13 }, (_, i) => [[10 + 8 * i, 20] as const, [10 + 8 * i, 60] as const]);
    expect(wordsSpot(PLACE, new LineField([...across, ...down]), WORDS)).toBeUndefined();
    expect(wordsSpot(PLACE, new LineField(), { width: 101, height: 10 })).toBeUndefined();
  });

  it("misses a slanted line whose box covers the words: from corner to corner it leaves room beside it", () => {
    const line = [
      [10, 20],
      [110, 60],
    ] as const;
    const spot = wordsSpot(PLACE, new LineField([line]), { width: 8, height: 6 })!;
    // The line rises 0.4 mm for each mm: at the spot it is farther from the middle than half the height and 0.4 of half the width.
    const away = Math.abs(spot.y - (20 + 0.4 * (spot.x - 10)));
    expect(away).toBeGreaterThan(3 + 0.4 * 4);
    expect(away).toBeLessThan(3 + 0.4 * 4 + 2.9);
  });
});
