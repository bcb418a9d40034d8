import { describe, expect, it } from "vitest";
import { distance, type Fan, leafAngle, leafRoot, leafTip } from "../../../src/core/fan/fan.ts";

const FLAT: Fan = { leaves: 204, leafWidth: 140, blockThickness: 24, opening: 1.2, spine: "flat", direction: "ltr" };
const ROUNDED: Fan = { ...FLAT, spine: "rounded" };
const BOOKS: [string, Fan][] = [
  ["flat", FLAT],
  ["rounded", ROUNDED],
  ["a thin book, wide open", { ...FLAT, leaves: 60, blockThickness: 6, opening: 3 }],
  ["a rounded spine, wide open", { ...ROUNDED, leaves: 61, opening: 3.1 }],
];

/** The tip by school trigonometry: where the leaf joins the spine, and from there along the leaf. `j` counts from 0. */
function expectedTip(fan: Fan, j: number, depth: number): { x: number; z: number } {
  const part = (2 * j + 1 - fan.leaves) / (2 * fan.leaves);
  const turn = part * fan.opening;
  const length = fan.leafWidth - depth;
  if (fan.spine === "flat")
    return { x: part * fan.blockThickness + length * Math.sin(turn), z: length * Math.cos(turn) };
  // The rounded spine is an arc as long as the block is thick; its middle is at 0, its centre behind it.
  const radius = fan.blockThickness / fan.opening;
  return { x: (radius + length) * Math.sin(turn), z: (radius + length) * Math.cos(turn) - radius };
}

describe("leafTip(fan, j, depth)", () => {
  it.each(BOOKS)("stands where trigonometry puts it, %s", (_, fan) => {
    for (let j = 0; j < fan.leaves; j += 1) {
      for (const depth of [0, 18, 42.5]) {
        const want = expectedTip(fan, j, depth);
        expect(leafTip(fan, j, depth).x).toBeCloseTo(want.x, 9);
        expect(leafTip(fan, j, depth).z).toBeCloseTo(want.z, 9);
      }
    }
  });

  it.each(BOOKS)("mirrors a book read from right to left, %s", (_, fan) => {
    const mirrored: Fan = { ...fan, direction: "rtl" };
    for (const j of [0, 13, fan.leaves - 1]) {
      const tip = leafTip(mirrored, j, 18);
      expect(tip.x).toBeCloseTo(-expectedTip(fan, j, 18).x, 9);
      expect(tip.z).toBeCloseTo(expectedTip(fan, j, 18).z, 9);
      expect(tip.x).toBeCloseTo(leafTip(fan, fan.leaves - 1 - j, 18).x, 9);
    }
  });

  it("has leaf 1 of a left-to-right book at the viewer's left", () => {
    expect(leafTip(FLAT, 0, 0).x).toBeLessThan(-80);
    expect(leafTip({ ...FLAT, direction: "rtl" }, 0, 0).x).toBeGreaterThan(80);
  });

  it("puts a deeper fold nearer the spine on the same leaf", () => {
    for (const [, fan] of BOOKS) {
      const [front, deep] = [leafTip(fan, 3, 10), leafTip(fan, 3, 40)];
      expect(distance(front, deep)).toBeCloseTo(30, 9);
      expect(Math.abs(deep.x)).toBeLessThan(Math.abs(front.x));
    }
  });

  it("tends from rounded to flat as the opening tends to 0", () => {
    const apart = (opening: number) =>
      Math.max(
        ...[0, 50, 101, 203].map((j) =>
          distance(leafTip({ ...ROUNDED, opening }, j, 18), leafTip({ ...FLAT, opening }, j, 18)),
        ),
      );
    // The sagitta of an arc as long as T with angle Φ is T·Φ/8 to first order, so it falls in step with Φ.
    expect(apart(1e-2)).toBeLessThan((24 * 1e-2) / 8 + 1e-6);
    expect(apart(1e-4)).toBeLessThan((24 * 1e-4) / 8 + 1e-6);
    expect(apart(1e-2) / apart(1e-3)).toBeCloseTo(10, 1);
  });
});

describe("leafAngle(fan, j) and leafRoot(fan, j)", () => {
  it("has half a leaf's turn between the opening and the outermost leaves", () => {
    expect(leafAngle(FLAT, 0)).toBeCloseTo(-0.6 + 0.6 / 204, 12);
    expect(leafAngle(FLAT, 203)).toBeCloseTo(0.6 - 0.6 / 204, 12);
    expect(leafAngle({ ...FLAT, leaves: 205 }, 102)).toBeCloseTo(0, 12);
  });

  it("has equal turns between neighbours", () => {
    for (let j = 1; j < 204; j += 1) expect(leafAngle(FLAT, j) - leafAngle(FLAT, j - 1)).toBeCloseTo(1.2 / 204, 12);
  });

  it("joins leaves to a straight spine at the block's own thickness", () => {
    expect(leafRoot(FLAT, 203).x - leafRoot(FLAT, 0).x).toBeCloseTo((24 * 203) / 204, 12);
    expect(leafRoot(FLAT, 0).z).toBe(0);
  });

  it("joins leaves to a rounded spine on an arc as long as the block is thick", () => {
    let length = 0;
    for (let j = 1; j < 204; j += 1) length += distance(leafRoot(ROUNDED, j - 1), leafRoot(ROUNDED, j));
    expect(length).toBeCloseTo((24 * 203) / 204, 4);
    expect(leafRoot({ ...ROUNDED, leaves: 205 }, 102)).toEqual({ x: expect.closeTo(0, 12), z: expect.closeTo(0, 12) });
    expect(leafRoot(ROUNDED, 0).z).toBeLessThan(0);
  });
});
