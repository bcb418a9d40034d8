import { describe, expect, it } from "vitest";
import type { MotifWish } from "../../../src/core/window/motif.ts";
import { motifParts } from "../../../src/core/window/motif-parts.ts";
import { extentOf } from "../geometry/plane.ts";
import { box, motifWish } from "./made.ts";

/** A hole of 100 by 80 mm in a frame of 120 by 100 mm. */
const HOLE = { left: -30, top: 10, right: 70, bottom: 90 };
const GROUND = {
  frame: { left: -40, top: 0, right: 80, bottom: 100 },
  hole: HOLE,
  light: { left: 0, top: 40, right: 20, bottom: 70 },
};

/** A box of 20 by 10, far from its origin, so that a box's sides cannot be taken for its size. */
const block = (changes: Partial<MotifWish> = {}): MotifWish =>
  motifWish({ name: "Sand Bank", area: [box(1000, 3000, 1020, 3010)], ...changes });

/** Half of a box of 40 by `height`. */
const sail = (height: number): MotifWish => {
  const area: MotifWish["area"] = [
    [
      [5, 7],
      [45, 7],
      [5, 7 + height],
    ],
  ];
  return motifWish({ name: "Sail", area });
};

const sizes = (parts: ReturnType<typeof motifParts>): number[][] =>
  parts.map(({ outlines }) => {
    const { left, top, right, bottom } = extentOf(outlines);
    expect([left, top]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    return [right, bottom];
  });

const near = (size: readonly number[]) => size.map((v) => expect.closeTo(v, 6));

// By hand: one that covers the light is 1.35 times as large as it; the others are 0.24 of the hole's width; none is more than
// 0.85 of the hole either way, but where the kit states its size.
describe("motifParts(wishes, ground)", () => {
  it("keeps the order of the kit, and says which one covers the light", () => {
    const parts = motifParts([sail(20), block({ coversLight: true }), sail(10)], GROUND);
    expect(parts.map(({ id, kind, motif }) => [id, kind, motif])).toEqual([
      ["motif-sail", "motif", "Sail"],
      ["motif-sand-bank", "largest-motif", "Sand Bank"],
      ["motif-sail-2", "motif", "Sail"],
    ]);
  });

  it.each([
    ["a light as high as three blocks", GROUND, [81, 40.5]],
    ["a wide and low light", { ...GROUND, light: box2(50, 10) }, [67.5, 33.75]],
    ["a light that fills the hole's width", { ...GROUND, light: box2(90, 30) }, [85, 42.5]],
    ["a low hole", { ...GROUND, hole: { ...HOLE, bottom: 30 } }, [34, 17]],
    ["no light", { ...GROUND, light: undefined }, [24, 12]],
  ] as const)("sizes what covers %s", (_, ground, size) => {
    expect(sizes(motifParts([block({ coversLight: true })], ground))).toEqual([near(size)]);
  });

  it.each([
    ["as broad as a quarter of the hole", 20, [24, 12]],
    ["no higher than the hole", 200, [13.6, 68]],
  ] as const)("makes the others small, %s", (_, height, size) => {
    expect(sizes(motifParts([sail(height)], GROUND))).toEqual([near(size)]);
  });

  it.each([
    [{ width: { mm: 30 } }, [30, 15]],
    [{ height: { mm: 30 } }, [60, 30]],
    [{ width: { mm: 30 }, height: { mm: 40 } }, [30, 40]],
    [{ width: { share: 0.5 } }, [60, 30]],
    [{ height: { share: 0.5 } }, [100, 50]],
    [{ width: { mm: 200 }, coversLight: true }, [200, 100]],
  ] as const)("takes the size that the kit states: %o", (stated, size) => {
    expect(sizes(motifParts([block(stated)], GROUND))).toEqual([near(size)]);
  });

  it("cuts them from card of their colour, one each, in frames of their own, with their place", () => {
    const card = { name: "red", colour: "#a63a33" };
    const at = [{ mm: 60 }, { mm: 50 }] as const;
    const [red, any] = motifParts([block({ card, spacers: 2, at, width: { mm: 10 } }), block()], GROUND);
    expect(red).toMatchObject({ material: "card", card, count: 1, frame: "own", scores: [], marks: [], spacers: 2 });
    expect(red!.seat).toEqual([15, 47.5]);
    expect(any).not.toHaveProperty("card");
  });
});

function box2(width: number, height: number) {
  return { left: 0, top: 40, right: width, bottom: 40 + height };
}
