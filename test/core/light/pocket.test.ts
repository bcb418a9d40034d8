import { describe, expect, it } from "vitest";
import type { Pocket } from "../../../src/core/light/light.ts";
import { cutPocket, largestIn, type PocketBook } from "../../../src/core/light/pocket.ts";
import type { RegionRows } from "../../../src/core/light/region-rows.ts";
import { failureIn, valueFrom } from "../findings/made.ts";

const LIGHT = { level: 3, diameter: 20, height: 40, clearance: 2, setback: 4, floor: 150 } as const;
type Light = Omit<typeof LIGHT, "diameter" | "height" | "clearance" | "setback" | "floor"> & {
  readonly [K in "diameter" | "height" | "clearance" | "setback"]: number;
} & { readonly floor: number | "auto" };

/** A region that narrows upward from 40 mm at 100 to nothing at 60, and stands 40 mm wide down to 150, about the middle. */
const FUNNEL: RegionRows = (height) => {
  if (height < 60 || height > 150) return undefined;
  const half = Math.min(20, (height - 60) / 2);
  return { from: 50 - half, to: 50 + half };
};

/** 40 mm wide between the heights that are given. */
const rooms =
  (...parts: readonly (readonly [number, number])[]): RegionRows =>
  (height) =>
    parts.some(([from, to]) => height >= from && height <= to) ? { from: 30, to: 70 } : undefined;

/**
 * Three leaves of 120 mm at −3°, 0° and 3°, rooted at −2, 0 and 2 mm, before a straight front 100 mm from the roots. All are
 * folded at the front level, 20 mm deep.
 */
function bookOf(changes: Partial<PocketBook> = {}): PocketBook {
  const at = (across: number) => ({ across, x: across - 50, z: 100, arc: across - 50 });
  return {
    fan: {
      leaves: 3,
      leafWidth: 120,
      blockThickness: 6,
      opening: (9 * Math.PI) / 180,
      spine: "flat",
      direction: "ltr",
    },
    curve: { points: [at(0), at(100)], atAcross: at, atX: (x) => at(x + 50), atArc: (arc) => at(arc + 50) },
    rows: FUNNEL,
    top: 20,
    bottom: 170,
    markStep: 0.5,
    depths: [20, 40, 60],
    leaves: [1, 2, 3].map(() => [{ from: 0, to: 200, level: 1 }]),
    ...changes,
  };
}

const pocketOf = (light: Partial<Light> = {}, book: Partial<PocketBook> = {}): Pocket =>
  valueFrom(cutPocket({ ...LIGHT, ...light }, bookOf(book)));
const obstacleOf = (light: Partial<Light>, book: Partial<PocketBook> = {}) => {
  const failure = failureIn(cutPocket({ ...LIGHT, ...light }, bookOf(book)));
  if (failure.kind !== "no-room-for-light") throw new Error(failure.kind);
  return failure.obstacle;
};
const depths = ({ notches }: Pocket) => notches.map(({ leaf, depth }) => [leaf, depth]);

// By hand: the axis stands 4 + 10 mm behind the front, so the grown cylinder (12 mm) begins 74 mm from the middle root. The
// outer rays enter it 75.689 mm from theirs (projection of the axis on the ray, then Pythagoras; worked out in Python).
describe("cutPocket(light, book)", () => {
  it("notches each leaf back to where it enters the cylinder, up to the next mark, over the light and its clearance", () => {
    const { notches, centre, floor } = pocketOf();
    expect([centre, floor]).toEqual([{ x: 0, z: 86 }, 150]);
    expect(notches).toEqual([
      { leaf: 1, from: 108, to: 150, depth: 44.5, remaining: 75.5 },
      { leaf: 2, from: 108, to: 150, depth: 46, remaining: 74 },
      { leaf: 3, from: 108, to: 150, depth: 44.5, remaining: 75.5 },
    ]);
    expect(depths(pocketOf({}, { markStep: 0.1 }))).toEqual([
      [1, 44.4],
      [2, 46],
      [3, 44.4],
    ]);
  });

  it("leaves a leaf whole that misses the cylinder, or whose light would stand behind its root", () => {
    // With the region's middle 10 mm to the right the first ray misses; the others enter 79.367 and 74.819 mm from their roots.
    const right: RegionRows = (height) => (height > 150 ? undefined : { from: 40, to: 80 });
    const pocket = pocketOf({}, { rows: right });
    expect(pocket.centre).toEqual({ x: 10, z: 86 });
    expect(depths(pocket)).toEqual([
      [2, 41],
      [3, 45.5],
    ]);
    // 11.99 mm beside the middle ray the cylinder is grazed, √0.24 mm before its middle; 12.01 mm beside it, it is not.
    const beside =
      (x: number): RegionRows =>
      (height) =>
        height > 150 ? undefined : { from: 30 + x, to: 70 + x };
    expect(depths(pocketOf({}, { rows: beside(11.99) }))[0]).toEqual([2, 34.5]);
    expect(depths(pocketOf({}, { rows: beside(12.01) }))[0]![0]).toBe(3);
    expect(pocketOf({ setback: 102 }).notches).toEqual([]);
    // With 101 mm the outer rays enter 23.005 mm before their roots, and leave 1 mm behind them.
    expect(obstacleOf({ setback: 101 })).toMatchObject({ kind: "little-paper", leaf: 1, remaining: -23.5 });
  });

  it("leaves a leaf whole whose tips stand behind where the light begins, at the light's heights", () => {
    const deep = (from: number, to: number, level = 1) => [
      { from: 0, to: from, level },
      { from, to, level: 3 },
      { from: to, to: 200, level },
    ];
    const notched = (...leaves: PocketBook["leaves"]) => pocketOf({}, { leaves }).notches.map(({ leaf }) => leaf);
    expect(notched(deep(108, 150), deep(108, 150), deep(100, 160))).toEqual([]);
    expect(notched(deep(108.5, 150), deep(108, 149.5), deep(108, 150))).toEqual([1, 2]);
    // Level 2 reaches 80 mm from the root, beyond 75.7; where the light begins 80 mm from it, it need not be cut.
    expect(notched([{ from: 0, to: 200, level: 2 }], [], undefined)).toEqual([1, 2]);
    const behind = pocketOf(
      { setback: -2 },
      { leaves: [[{ from: 0, to: 200, level: 2 }], [{ from: 0, to: 200, level: 2 }]] },
    );
    expect(behind.notches).toEqual([]);
  });

  it("stands on the region's middle at its floor, on what is just above it", () => {
    const step: RegionRows = (height) => (height < 150 ? { from: 10, to: 50 } : { from: 60, to: 100 });
    expect(pocketOf({}, { rows: step }).centre.x).toBe(-20);
    const level: RegionRows = (height) => (height < 150 && height > 100 ? { from: 30, to: 70 } : undefined);
    expect(pocketOf({}, { rows: level }).leastWidth).toBe(40);
  });

  it("states the region's least width over the heights that the light fills", () => {
    expect(pocketOf().leastWidth).toBe(40);
    // Sampled each tenth of a millimetre; at 90 mm the funnel is 30 mm wide, at 50 mm there is none.
    expect(Math.abs(pocketOf({ height: 60 }).leastWidth - 30)).toBeLessThanOrEqual(0.1);
    expect(pocketOf({ height: 100 }).leastWidth).toBe(0);
    expect(pocketOf({ height: 49 }).leastWidth).toBe(40);
  });
});

describe("what keeps a light from standing", () => {
  it("is a level that is not at its floor", () => {
    expect(obstacleOf({ floor: 150.5 })).toEqual({ kind: "level-absent", floor: 150.5 });
  });

  it("is the head of the leaf", () => {
    const everywhere = { rows: rooms([0, 150]) };
    expect(pocketOf({ floor: 42 }, everywhere).notches[0]).toMatchObject({ from: 0, to: 42 });
    expect(obstacleOf({ floor: 41.5 }, everywhere)).toEqual({ kind: "above-head", by: 0.5 });
  });

  it("is paper of less than 15 mm at the gutter, on the leaf with least of it, the first among equals", () => {
    expect(pocketOf({ setback: 63 }).notches[1]).toMatchObject({ depth: 105, remaining: 15 });
    expect(obstacleOf({ setback: 63.5 })).toEqual({ kind: "little-paper", leaf: 1, remaining: 14.5, least: 15 });
    expect(obstacleOf({ setback: 63.5 }, { markStep: 0.1 })).toMatchObject({ leaf: 2, remaining: 14.5 });
  });

  it("is named with the light, and the largest that stands", () => {
    expect(failureIn(cutPocket({ ...LIGHT, floor: 151 }, bookOf()))).toEqual({
      kind: "no-room-for-light",
      level: 3,
      diameter: 20,
      height: 40,
      clearance: 2,
      obstacle: { kind: "level-absent", floor: 151 },
      largest: { diameter: 0, height: 0 },
    });
  });
});

describe("a floor that is not given", () => {
  const auto = (rows: RegionRows, light: Partial<Light> = {}, book: Partial<PocketBook> = {}) =>
    pocketOf({ ...light, floor: "auto" }, { rows, ...book }).floor;
  const nowhere = (rows: RegionRows, light: Partial<Light> = {}) => obstacleOf({ ...light, floor: "auto" }, { rows });

  // 24 mm are needed: light and clearance at both sides. The funnel has them from 84 down to 150 mm.
  it("is the lowest mark over which the region is wide enough for the light's whole height", () => {
    expect(auto(FUNNEL)).toBe(150);
    expect(auto(FUNNEL, { height: 66 })).toBe(150);
    expect(nowhere(FUNNEL, { height: 66.5 })).toEqual({ kind: "nowhere-wide", need: 24 });
    expect(auto(FUNNEL, { diameter: 36 })).toBe(150);
    expect(nowhere(FUNNEL, { diameter: 36.5 })).toEqual({ kind: "nowhere-wide", need: 40.5 });
  });

  it("is in a higher room where the lower one is not high enough", () => {
    expect(auto(rooms([20, 100], [120, 150]))).toBe(100);
    expect(auto(rooms([20, 100], [120, 150]), { height: 30 })).toBe(150);
    expect(auto(rooms([20, 100], [110, 150]))).toBe(150);
    expect(nowhere(rooms([100, 130], [140, 165]))).toEqual({ kind: "nowhere-wide", need: 24 });
  });

  it("is a multiple of the mark step, at the picture's foot at most", () => {
    expect(auto(rooms([20, 149.8]))).toBe(149.5);
    expect(auto(rooms([20, 149.8]), {}, { markStep: 1 })).toBe(149);
    expect(auto(rooms([20, 149.43]), {}, { markStep: 0.1 })).toBeCloseTo(149.4, 9);
    expect(auto(rooms([20, 300]))).toBe(170);
    expect(auto(rooms([20, 300]), {}, { bottom: 169.7 })).toBe(169.5);
  });

  it("lets the light reach up to the picture's head and no further", () => {
    const book = { top: 60, bottom: 100 };
    expect(auto(rooms([0, 300]), { height: 40 }, book)).toBe(100);
    expect(obstacleOf({ floor: "auto", height: 40.5 }, { rows: rooms([0, 300]), ...book })).toHaveProperty("need", 24);
  });
});

// By hand: the widest is 40 mm less the clearance on both sides; the highest reaches from the floor to where the funnel is
// 24 mm wide, 84 mm below the head, or, where nothing narrows it, to 2 mm below the head or the picture's own head.
describe("largestIn(light, book)", () => {
  const largest = (light: Partial<Light>, book: Partial<PocketBook> = {}) =>
    largestIn({ ...LIGHT, floor: "auto", ...light }, bookOf(book));

  it.each([
    ["in the funnel", {}, {}, { diameter: 36, height: 66 }],
    ["with more clearance", { clearance: 5.25 }, {}, { diameter: 29.5, height: 60 - 0.5 }],
    ["in a straight room", {}, { rows: rooms([20, 150]) }, { diameter: 36, height: 130 }],
    ["up to the head", {}, { rows: rooms([0, 150]), top: 0 }, { diameter: 36, height: 148 }],
    ["nowhere", { diameter: 50 }, { rows: rooms([100, 130]) }, { diameter: 0, height: 0 }],
  ] as const)("is the widest of this height and the highest of this width, %s", (_, light, book, expected) => {
    expect(largest(light, book)).toEqual(expected);
  });

  it("is stated of a light that stands, too", () => {
    expect(pocketOf({ floor: "auto" }).largest).toEqual({ diameter: 36, height: 66 });
  });

  it("is narrowed by the paper at the gutter", () => {
    // Axis at 90 − s − (D/2 − 10), entry 12 + (D − 20)/2 nearer: 78 − s less D − 20 must be 15 or more.
    expect(largest({ setback: 50 }).diameter).toBe(33);
  });
});
