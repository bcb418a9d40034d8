import { describe, expect, it } from "vitest";
import type { Point, Ring } from "../../../src/core/geometry/point.ts";
import { simplify, thinOut } from "../../../src/core/geometry/simplify.ts";
import { fc } from "../../seed.ts";

const TOLERANCE = 0.01;

/** Six corners, one leftmost and one rightmost. */
const CORNERS: Ring = [
  [0, 5],
  [3, 0],
  [7, 0],
  [10, 5],
  [7, 10],
  [3, 10],
];

/** The corners with a point in the middle of each side, the upper one `dent` mm inside it. */
function withMiddles(dent: number): Point[] {
  return CORNERS.flatMap((corner, i): Point[] => {
    const next = CORNERS[(i + 1) % 6]!;
    return [corner, [(corner[0] + next[0]) / 2, (corner[1] + next[1]) / 2 + (i === 1 ? dent : 0)]];
  });
}

const sorted = (ring: Ring): Point[] => ring.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
const rotations = (ring: Ring): Ring[] => ring.map((_, i) => [...ring.slice(i), ...ring.slice(0, i)]);

// By hand.
describe("thinOut(area, tolerance)", () => {
  it("drops what lies on a side, wherever the ring begins and whichever way it runs", () => {
    for (const ring of rotations(withMiddles(0))) {
      expect(sorted(thinOut([ring], TOLERANCE)[0]!)).toEqual(sorted(CORNERS));
      expect(sorted(thinOut([ring.toReversed()], TOLERANCE)[0]!)).toEqual(sorted(CORNERS));
    }
  });

  it.each([
    [0.0099, 6],
    [0.0101, 7],
  ])("keeps a point that lies further than the tolerance from the outline: %d mm, %d points", (dent, points) => {
    expect(thinOut([withMiddles(dent)], TOLERANCE)[0]).toHaveLength(points);
  });

  it("keeps the sense of a ring, and drops one that has fewer than three points left", () => {
    const [ring] = thinOut([withMiddles(0)], TOLERANCE);
    expect(ring).toEqual(CORNERS);
    const flat: Ring = [
      [0, 0],
      [5, 0.005],
      [10, 0],
      [5, -0.005],
    ];
    expect(thinOut([flat, CORNERS], TOLERANCE)).toEqual([CORNERS]);
    expect(simplify([flat, CORNERS], TOLERANCE)).toEqual([CORNERS]);
  });

  it("measures from a side's end where a point lies beyond it", () => {
    // A spike out of the lower side leaves it and comes back on one line.
    const spike: Ring = [
      [0, 5],
      [10, 0],
      [10, 10],
      [10, 14],
      [10, 10],
      [5, 10],
    ];
    expect(sorted(thinOut([spike], TOLERANCE)[0]!)).toContainEqual([10, 14]);
  });
});

describe("simplify(area, tolerance)", () => {
  /** The corners with a dent in the upper side, 0.1 mm to both sides. */
  const dented = (deep: number, half = 0.1): Ring => {
    const [left, first, second, ...rest] = CORNERS as [Point, Point, Point, ...Point[]];
    return [left, first, [5 - half, 0], [5, deep], [5 + half, 0], second, ...rest];
  };

  it.each([
    [0.0118, 0.1, false],
    [0.0122, 0.1, true],
    [0.0118, 0.21, true],
  ])(
    "joins sides under 0.2 mm where that moves the outline by no more than 1.2 tolerances: %d mm, sides of %d mm, kept %s",
    (deep, half, kept) => {
      for (const ring of rotations(dented(deep, half))) {
        const [joined] = simplify([ring], TOLERANCE);
        expect(joined!.some(([x, y]) => x === 5 && y === deep)).toBe(kept);
        for (const corner of CORNERS) expect(joined).toContainEqual(corner);
      }
    },
  );

  it("keeps a short side that the shape itself has", () => {
    const stepped: Ring = [
      [0, 5],
      [3, 0],
      [5, 0],
      [5, 0.1],
      [7, 0.1],
      [10, 5],
      [6, 10],
    ];
    for (const ring of rotations(stepped)) expect(sorted(simplify([ring], TOLERANCE)[0]!)).toEqual(sorted(stepped));
  });

  it("keeps three corners however short its sides are", () => {
    const tiny: Ring = [
      [0, 0],
      [0.1, 0],
      [0.05, 0.1],
    ];
    expect(simplify([tiny], TOLERANCE)[0]).toHaveLength(3);
  });

  it("leaves none of the old points further off than 1.2 tolerances, whatever was thinned out before sides were joined", () => {
    const bumps = fc.array(fc.double({ min: -0.02, max: 0.02, noNaN: true }), { minLength: 200, maxLength: 400 });
    fc.assert(
      fc.property(bumps, (all) => {
        const ring = all.map((bump, i): Point => {
          const angle = (2 * Math.PI * i) / all.length;
          return [(6 + bump) * Math.cos(angle), (6 + bump) * Math.sin(angle)];
        });
        const [joined] = simplify([ring], TOLERANCE);
        for (const point of ring) expect(awayFrom(point, joined!)).toBeLessThanOrEqual(1.2 * TOLERANCE + 1e-9);
      }),
    );
  });
});

/** How far a point lies from a ring. */
function awayFrom([x, y]: Point, ring: Ring): number {
  const sides = ring.map(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    const share = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
    const at = Math.min(1, Math.max(0, share));
    return Math.hypot(x - ax - at * (bx - ax), y - ay - at * (by - ay));
  });
  return Math.min(...sides);
}
