import { describe, expect, it } from "vitest";
import { boxOf } from "../../../src/core/geometry/box.ts";
import { arcChords, arcPoints, bezierChords, bezierPoint, bezierPoints } from "../../../src/core/geometry/chords.ts";
import { arcFromEnds, arcPoint, type EllipseArc, mapArc } from "../../../src/core/geometry/ellipse-arc.ts";
import type { Point } from "../../../src/core/geometry/point.ts";

const near = ([x, y]: readonly [number, number]) => [expect.closeTo(x, 9), expect.closeTo(y, 9)];

const HILL: Point[] = [
  [0, 0],
  [1, 2],
  [2, 0],
];
const BEND: Point[] = [
  [0, 0],
  [0, 1],
  [1, 1],
  [4, 1],
];

describe("boxOf(rings)", () => {
  it("reaches from the least to the greatest of all points", () => {
    expect(boxOf([HILL, BEND, [[-3, -1]]])).toEqual({ left: -3, top: -1, right: 4, bottom: 2 });
    expect(boxOf([[[5, 9]], [[7, 6]]])).toEqual({ left: 5, top: 6, right: 7, bottom: 9 });
  });
});

// By hand: a chord over h strays by h²/8 of the second derivative; n(n − 1) times the greatest second difference bounds it.
describe("a Bézier curve", () => {
  it.each([
    ["a hill, whose second difference is 4", HILL, 0.01, 10],
    ["a hill, a little finer", HILL, 0.0099, 11],
    ["a bend, whose second differences are √2 and 2", BEND, 0.015, 10],
    ["a bend, read backward", BEND.toReversed(), 0.015, 10],
    [
      "a straight line",
      [
        [0, 0],
        [4, 1],
      ],
      0.01,
      1,
    ],
    ["a rough hill", HILL, 100, 1],
  ] as const)("is cut into as many chords as the tolerance asks for: %s", (_, points, tolerance, count) => {
    expect(bezierChords(points, tolerance)).toBe(count);
  });

  it("runs by de Casteljau's construction", () => {
    expect(bezierPoint(HILL, 0.5)).toEqual([1, 1]);
    expect(bezierPoint(BEND, 0.5)).toEqual([0.875, 0.875]);
    // t = 1/4: y of the hill is 2·2·t·(1 − t).
    expect(bezierPoint(HILL, 0.25)).toEqual([0.5, 0.75]);
    expect(bezierPoint([[3, 4]], 0.7)).toEqual([3, 4]);
    expect(bezierPoints(BEND, 2)).toEqual([
      [0.875, 0.875],
      [4, 1],
    ]);
  });
});

describe("an elliptical arc's chords", () => {
  const arc = (sweep: number, rx = 10, ry = 10): EllipseArc => ({
    centre: [1, 2],
    cosAxis: [0, rx],
    sinAxis: [-ry, 0],
    from: 0,
    sweep,
  });

  // A chord over a 24th of a turn strays by r·(1 − cos(π/24)).
  const stray = 10 * (1 - Math.cos(Math.PI / 24));
  it.each([
    [2 * Math.PI, stray * 1.0001, 24],
    [2 * Math.PI, stray * 0.9999, 25],
    [-Math.PI, stray * 1.0001, 12],
    [2 * Math.PI, 9.99, 4],
    [2 * Math.PI, 30, 4],
    [0.6 * Math.PI, 30, 2],
    [0.5 * Math.PI, 30, 1],
    [0, 0.01, 1],
  ])("are enough for a sweep of %d and a tolerance of %d: %d", (sweep, tolerance, count) => {
    expect(arcChords(arc(sweep), tolerance)).toBe(count);
    expect(arcChords(arc(sweep, 3), tolerance)).toBe(count);
  });

  it("end at the arc's end, the first one chord after its start", () => {
    const half = Math.SQRT1_2 * 10;
    expect(arcPoints(arc(Math.PI / 2), 2)).toEqual([near([1 - half, 2 + half]), near([-9, 2])]);
  });
});

// Source: SVG 2, implementation notes, F.6.5 and F.6.6; middles by hand: a chord of 10 in a circle of 10 has a rise of
// 10 − √75, the larger arc one of 10 + √75.
describe("arcFromEnds(arc)", () => {
  const low = 10 - Math.sqrt(75);
  const high = 10 + Math.sqrt(75);
  const ends = { start: [2, 3], end: [12, 3], radii: [10, 10], turn: 0 } as const;
  const middle = (arc: EllipseArc): Point => arcPoint(arc, arc.from + arc.sweep / 2);

  it.each([
    [false, true, 3 - low],
    [true, true, 3 - high],
    [false, false, 3 + low],
    [true, false, 3 + high],
  ])("large %s, clockwise %s", (large, clockwise, y) => {
    const arc = arcFromEnds({ ...ends, large, clockwise });
    expect(arcPoint(arc, arc.from)).toEqual(near([2, 3]));
    expect(arcPoint(arc, arc.from + arc.sweep)).toEqual(near([12, 3]));
    expect(middle(arc)).toEqual(near([7, y]));
    expect(Math.sign(arc.sweep)).toBe(clockwise ? 1 : -1);
    expect(Math.abs(arc.sweep) > Math.PI).toBe(large);
  });

  it("scales radii up that are too short to reach", () => {
    const arc = arcFromEnds({ ...ends, radii: [2, 1], large: false, clockwise: true });
    expect(arc.centre).toEqual(near([7, 3]));
    expect(middle(arc)).toEqual(near([7, 0.5]));
    expect([arcPoint(arc, arc.from), arcPoint(arc, arc.from + arc.sweep)]).toEqual([near([2, 3]), near([12, 3])]);
    expect(Math.abs(arc.sweep)).toBeCloseTo(Math.PI, 9);
  });

  it.each([true, false])("turns the axes, clockwise %s", (clockwise) => {
    // An ellipse of 4 by 2 that leans by 30°, run from the end of its first half-axis to that of its second.
    const turn = Math.PI / 6;
    const first: Point = [4 * Math.cos(turn), 4 * Math.sin(turn)];
    const second: Point = [-2 * Math.sin(turn), 2 * Math.cos(turn)];
    const [start, end] = clockwise ? [first, second] : [second, first];
    const arc = arcFromEnds({ start, end, radii: [4, 2], turn, large: false, clockwise });
    expect(arc.centre).toEqual(near([0, 0]));
    expect(arc.cosAxis).toEqual(near(first));
    expect(arc.sinAxis).toEqual(near(second));
    expect(arc.sweep).toBeCloseTo(((clockwise ? 1 : -1) * Math.PI) / 2, 9);
    expect(arcPoint(arc, arc.from)).toEqual(near(start));
  });

  it("is mapped by mapping its centre and its axes", () => {
    const arc = arcFromEnds({ ...ends, large: false, clockwise: true });
    const mapped = mapArc([2, 3, 5, 7, 11, 13], arc);
    const [x, y] = middle(arc);
    expect(middle(mapped)).toEqual(near([2 * x + 5 * y + 11, 3 * x + 7 * y + 13]));
    expect([mapped.from, mapped.sweep]).toEqual([arc.from, arc.sweep]);
  });
});
