import { describe, expect, it } from "vitest";
import type { Fan } from "../../../src/core/fan/fan.ts";
import { holdWidth, layFront } from "../../../src/core/fan/front.ts";
import { type CurvePoint, frontCurve } from "../../../src/core/fan/front-curve.ts";

/** Four leaves rooted in one point at −45°, −15°, 15° and 45°, folded at radius 100. */
const fan = (direction: "ltr" | "rtl"): Fan => ({
  leaves: 4,
  leafWidth: 120,
  blockThickness: 0,
  opening: (2 * Math.PI) / 3,
  spine: "flat",
  direction,
});

// By hand: tips at ±100·sin 45° and ±100·sin 15°, chords of 30° in a circle of 100.
const [OUT, IN] = [100 * Math.SQRT1_2, 100 * Math.sin(Math.PI / 12)];
const CHORD = 200 * Math.sin(Math.PI / 12);
const Z = 100 * Math.cos(Math.PI / 12);
/** The outermost cell reaches half a pitch beyond its tip. */
const HALF = (OUT - IN) / 2;

const curveOf = (direction: "ltr" | "rtl", first = 0, count = 4) => {
  const range = { first, count };
  return frontCurve(fan(direction), range, layFront(fan(direction), range, 20, "front"), 20);
};
const near = (point: CurvePoint) => [point.x, point.z, point.across, point.arc].map((v) => expect.closeTo(v, 9));
const values = ({ x, z, across, arc }: CurvePoint) => [x, z, across, arc];

describe("frontCurve(fan, range, front, frontDepth)", () => {
  const points: CurvePoint[] = [
    { x: -OUT, z: OUT, across: HALF, arc: -1.5 * CHORD },
    { x: -IN, z: Z, across: HALF + OUT - IN, arc: -0.5 * CHORD },
    { x: IN, z: Z, across: HALF + OUT + IN, arc: 0.5 * CHORD },
    { x: OUT, z: OUT, across: HALF + 2 * OUT, arc: 1.5 * CHORD },
  ];

  it.each(["ltr", "rtl"] as const)("runs from the viewer's left to the right, %s", (direction) => {
    const curve = curveOf(direction);
    expect(curve.points.map(values)).toEqual(points.map(near));
    for (const point of points) {
      expect(values(curve.atX(point.x))).toEqual(near(point));
      expect(values(curve.atAcross(point.across))).toEqual(near(point));
      expect(values(curve.atArc(point.arc))).toEqual(near(point));
    }
  });

  it("is straight between neighbouring tips", () => {
    const curve = curveOf("ltr");
    expect(values(curve.atX(0))).toEqual(near({ x: 0, z: Z, across: HALF + OUT, arc: 0 }));
    const quarter = { x: -OUT + (OUT - IN) / 4, z: OUT + (Z - OUT) / 4, across: HALF * 1.5, arc: -1.25 * CHORD };
    expect(values(curve.atX(quarter.x))).toEqual(near(quarter));
    expect(values(curve.atAcross(quarter.across))).toEqual(near(quarter));
    expect(values(curve.atArc(quarter.arc))).toEqual(near(quarter));
  });

  it("goes on beyond the outermost tips as between the last two, to the picture's edges and further", () => {
    const curve = curveOf("rtl");
    const left = { x: -OUT - HALF, z: OUT - (Z - OUT) / 2, across: 0, arc: -2 * CHORD };
    expect(values(curve.atAcross(0))).toEqual(near(left));
    const right = { x: OUT + 2 * HALF, z: OUT - (Z - OUT), across: 3 * HALF + 2 * OUT, arc: 2.5 * CHORD };
    expect(values(curve.atArc(2.5 * CHORD))).toEqual(near(right));
  });

  it.each([
    ["ltr", 0, -OUT],
    ["ltr", 1, -IN],
    ["rtl", 0, IN],
    ["rtl", 2, -OUT],
  ] as const)(
    "counts arcs from the fan's middle wherever the picture stands, %s from leaf %d",
    (direction, first, left) => {
      const curve = curveOf(direction, first, 2);
      expect(curve.points[0]!.x).toBeCloseTo(left, 9);
      // From one tip to the next the arc is a chord; the middle of the fan lies at 0 of the straight that goes through it.
      const [a, b] = curve.points as [CurvePoint, CurvePoint];
      expect(b.arc - a.arc).toBeCloseTo(CHORD, 9);
      expect(a.arc).toBeCloseTo((a.x / (b.x - a.x)) * CHORD, 9);
      expect(a.across).toBeCloseTo((b.x - a.x) / 2, 9);
    },
  );
});

describe("holdWidth(fan, first, firstDepth, last, lastDepth)", () => {
  it("is the straight distance between two folded edges, each at its own depth", () => {
    // At −45° and 45° square to one another: radii 80 and 60 make 100.
    expect(holdWidth(fan("ltr"), 0, 40, 3, 60)).toBeCloseTo(100, 9);
    expect(holdWidth(fan("rtl"), 3, 60, 0, 40)).toBeCloseTo(100, 9);
    expect(holdWidth(fan("ltr"), 1, 20, 2, 20)).toBeCloseTo(CHORD, 9);
  });
});
