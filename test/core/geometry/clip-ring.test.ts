import { describe, expect, it } from "vitest";
import { clipRing, staysWithin } from "../../../src/core/geometry/clip-ring.ts";
import { areaOf, extentOf, type Ring } from "./plane.ts";

const SQUARE: Ring = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const KITE: Ring = [
  [5, -5],
  [15, 5],
  [5, 15],
  [-5, 5],
];

// By hand.
describe("clipRing(ring, convex)", () => {
  it.each([
    ["either way round", SQUARE],
    ["or the other", SQUARE.toReversed()],
  ])("keeps what lies inside the outline, %s", (_, outline) => {
    const part: Ring = [
      [4, 2],
      [14, 2],
      [14, 8],
      [4, 8],
    ];
    const clipped = clipRing(part, outline);
    expect(extentOf([clipped])).toMatchObject({ left: 4, top: 2, right: 10, bottom: 8 });
    expect(areaOf([clipped])).toBeCloseTo(36, 12);
    expect(
      clipRing(
        part,
        outline.map(([x, y]) => [x + 40, y]),
      ),
    ).toEqual([]);
    expect(clipRing(SQUARE, outline)).toEqual(SQUARE);
  });

  it("cuts slanting sides where they meet the outline", () => {
    // The kite of 20 by 20 loses a tip of 5 by 10 at each side; the square fits into it but for nothing.
    expect(areaOf([clipRing(KITE, SQUARE)])).toBeCloseTo(100, 9);
    expect(
      areaOf([
        clipRing(
          KITE,
          SQUARE.map(([x, y]) => [x + 5, y]),
        ),
      ]),
    ).toBeCloseTo(75, 9);
    expect(
      clipRing(
        [
          [2, 2],
          [22, 7],
          [2, 7],
        ],
        SQUARE,
      ),
    ).toEqual([
      [2, 2],
      [10, 4],
      [10, 7],
      [2, 7],
    ]);
  });
});

describe("staysWithin(ring, convex, tolerance)", () => {
  const at = (x: number, y: number): Ring => [
    [5, 5],
    [x, y],
    [5, 6],
  ];

  it.each([
    [10, 5, 0, true],
    [10.1, 5, 0.09, false],
    [10.1, 5, 0.11, true],
    [-0.1, 5, 0.09, false],
    [-0.1, 5, 0.11, true],
    [5, 10.1, 0.09, false],
    [5, -0.1, 0.11, true],
  ])("has (%d, %d) within the square to %d: %s", (x, y, tolerance, stays) => {
    expect(staysWithin(at(x, y), SQUARE, tolerance)).toBe(stays);
    expect(staysWithin(at(x, y), SQUARE.toReversed(), tolerance)).toBe(stays);
  });

  it("measures square to a slanting side", () => {
    // 0.1 beyond the kite's side along x is 0.0707 square to it.
    const beyond = at(13.1, 3 + 4);
    expect(staysWithin(beyond, KITE, 0.07)).toBe(false);
    expect(staysWithin(beyond, KITE, 0.072)).toBe(true);
  });
});
