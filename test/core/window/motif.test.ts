import { describe, expect, it } from "vitest";
import { type Motif, motifParts } from "../../../src/core/window/motif.ts";
import { extentOf } from "../geometry/plane.ts";
import { box } from "./made.ts";

/** A hole of 100 by 80 mm. */
const HOLE = { left: -30, top: 10, right: 70, bottom: 90 };

/** Fills its box of 20 by 10 wholly; far from its origin, so that a box's sides cannot be taken for its size. */
const block = (): Motif => ({ name: "Sand Bank", area: [box(1000, 3000, 1020, 3010)] });

/** Fills half of its box of 40 by `height`. */
const sail = (height: number): Motif => ({
  name: "Sail",
  area: [
    [
      [5, 7],
      [45, 7],
      [5, 7 + height],
    ],
  ],
});

const LIGHT = { level: 3, diameter: 20, height: 30, clearance: 2, setback: 4, floor: "auto" } as const;

const sizes = (parts: ReturnType<typeof motifParts>): number[][] =>
  parts.map(({ outlines }) => {
    const { left, top, right, bottom } = extentOf(outlines);
    expect([left, top]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    return [right, bottom];
  });

// By hand: the largest covers the light 1.35 times, or is 0.425 of the hole's width; the others 0.24 of it; none is more than
// 0.85 of the hole either way.
describe("motifParts(motifs, hole, light)", () => {
  it("takes the one that fills its box best as the largest, wherever it stands in the list", () => {
    for (const motifs of [
      [sail(20), block()],
      [block(), sail(20)],
    ]) {
      expect(motifParts(motifs, HOLE, LIGHT).map(({ id, kind, motif }) => [id, kind, motif])).toEqual([
        ["motif-sand-bank", "largest-motif", "Sand Bank"],
        ["motif-sail", "motif", "Sail"],
      ]);
    }
  });

  it.each([
    ["a light as high as three blocks", LIGHT, HOLE, [81, 40.5]],
    ["a wide and low light", { ...LIGHT, diameter: 50, height: 10 }, HOLE, [67.5, 33.75]],
    ["a light that fills the hole's width", { ...LIGHT, diameter: 90 }, HOLE, [85, 42.5]],
    ["a low hole", LIGHT, { ...HOLE, bottom: 30 }, [34, 17]],
    ["no light", undefined, HOLE, [42.5, 21.25]],
  ] as const)("sizes the largest for %s", (_, light, hole, size) => {
    expect(sizes(motifParts([block(), sail(20)], hole, light))[0]).toEqual(size.map((v) => expect.closeTo(v, 6)));
  });

  it.each([
    ["as broad as a quarter of the hole", 20, [24, 12]],
    ["no higher than the hole", 200, [13.6, 68]],
  ] as const)("makes the others small, %s", (_, height, size) => {
    expect(sizes(motifParts([block(), sail(height)], HOLE, LIGHT))[1]).toEqual(size.map((v) => expect.closeTo(v, 6)));
  });

  it("cuts them from card, one each, in frames of their own", () => {
    for (const part of motifParts([block(), sail(20)], HOLE, LIGHT))
      expect(part).toMatchObject({ material: "card", count: 1, frame: "own", scores: [], marks: [] });
  });
});
