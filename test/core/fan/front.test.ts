import { describe, expect, it } from "vitest";
import type { Fan } from "../../../src/core/fan/fan.ts";
import { boardWidth, frontWidth, layFront, stationAt, tipWidth } from "../../../src/core/fan/front.ts";
import { cellEdges, displayedWidth, readingPositions, tip } from "../../oracle/fan.ts";

const FLAT: Fan = { leaves: 204, leafWidth: 140, blockThickness: 24, opening: 1.2, spine: "flat", direction: "ltr" };
const RANGE = { first: 12, count: 180 };
const BOOKS: [string, Fan][] = [
  ["flat, ltr", FLAT],
  ["flat, rtl", { ...FLAT, direction: "rtl" }],
  ["rounded, ltr", { ...FLAT, spine: "rounded", opening: 2.4 }],
  ["rounded, rtl", { ...FLAT, spine: "rounded", direction: "rtl" }],
];

describe("layFront(fan, range, frontDepth, view)", () => {
  it.each(BOOKS)("has cell edges midway between tips and half a pitch beyond the outermost, %s", (_, fan) => {
    for (const view of ["front", "along"] as const) {
      const front = layFront(fan, RANGE, 18, view);
      const edges = cellEdges(readingPositions(fan, 13, 192, 18, view));
      // The oracle counts from the viewer's left; the front from the first leaf's outer edge.
      const inOrder =
        fan.direction === "ltr" ? edges.map((e) => e - edges[0]!) : edges.map((e) => edges[180]! - e).toReversed();
      expect(front.edges).toHaveLength(181);
      front.edges.forEach((edge, i) => {
        expect(edge).toBeCloseTo(inOrder[i]!, 9);
      });
      expect(front.width).toBeCloseTo(edges[180]! - edges[0]!, 9);
      front.stations.forEach((station, i) => {
        expect(station).toBeGreaterThan(front.edges[i]!);
        expect(station).toBeLessThan(front.edges[i + 1]!);
      });
    }
  });

  it("lays two leaves out as two equal cells", () => {
    const front = layFront(FLAT, { first: 0, count: 2 }, 18, "front");
    const pitch = tip(FLAT, 2, 18).x - tip(FLAT, 1, 18).x;
    expect(front.edges).toEqual([0, expect.closeTo(pitch, 9), expect.closeTo(2 * pitch, 9)]);
    expect(front.stations).toEqual([expect.closeTo(pitch / 2, 9), expect.closeTo(1.5 * pitch, 9)]);
  });

  it("is as wide along a rounded spine's front as the arc of its cells", () => {
    // Closed form: tips at one depth lie on a circle of radius T/Φ + W − d, Φ/N apart.
    const fan: Fan = { ...FLAT, spine: "rounded" };
    const chord = 2 * (24 / 1.2 + 122) * Math.sin(0.6 / 204);
    expect(layFront(fan, RANGE, 18, "along").width).toBeCloseTo(180 * chord, 9);
  });
});

// Source: the oracle's fan, which lays every cell out.
describe("frontWidth(fan, range, frontDepth, view)", () => {
  const ranges = [
    { first: 0, count: 60 },
    { first: 11, count: 40 },
    { first: 3, count: 3 },
    { first: 50, count: 2 },
  ];

  it.each(BOOKS)("is the width of the whole front, seen from before or walking round, %s", (_, fan) => {
    for (const { first, count } of ranges)
      for (const view of ["front", "along"] as const) {
        const expected = displayedWidth(fan, first + 1, first + count, 18, view);
        expect(frontWidth(fan, { first, count }, 18, view)).toBeCloseTo(expected, 9);
        expect(layFront(fan, { first, count }, 18, view).width).toBeCloseTo(expected, 9);
      }
  });
});

describe("stationAt(…)", () => {
  it.each(BOOKS)("sees deeper tips nearer the middle, on the stations' scale, %s", (_, fan) => {
    const front = layFront(fan, RANGE, 18, "front");
    const across = (leaf: number, depth: number) => (fan.direction === "ltr" ? 1 : -1) * tip(fan, leaf, depth).x;
    const outer = across(13, 18) - (across(14, 18) - across(13, 18)) / 2;
    for (const leaf of [13, 14, 80, 102, 150, 192]) {
      for (const depth of [18, 26, 42]) {
        const station = stationAt(fan, RANGE, front, 18, leaf - 1, depth);
        expect(station).toBeCloseTo(across(leaf, depth) - outer, 9);
      }
      expect(stationAt(fan, RANGE, front, 18, leaf - 1, 18)).toBeCloseTo(front.stations[leaf - 13]!, 9);
    }
    const middle = front.width / 2;
    expect(stationAt(fan, RANGE, front, 18, 12, 42)).toBeGreaterThan(front.stations[0]!);
    expect(Math.abs(stationAt(fan, RANGE, front, 18, 191, 42) - middle)).toBeLessThan(front.stations[179]! - middle);
  });
});

describe("tipWidth(fan, range, frontDepth)", () => {
  it.each(BOOKS)("is the straight distance between the outermost front tips, %s", (_, fan) => {
    const [a, b] = [tip(fan, 13, 18), tip(fan, 192, 18)];
    expect(tipWidth(fan, RANGE, 18)).toBeCloseTo(Math.hypot(a.x - b.x, a.z - b.z), 9);
  });

  it("counts depth where borders differ", () => {
    const [a, b] = [tip(FLAT, 3, 18), tip(FLAT, 102, 18)];
    expect(Math.abs(a.z - b.z)).toBeGreaterThan(10);
    expect(tipWidth(FLAT, { first: 2, count: 100 }, 18)).toBeCloseTo(Math.hypot(a.x - b.x, a.z - b.z), 9);
  });
});

describe("boardWidth(fan, square, boardThickness)", () => {
  it.each([
    // Block 24 and two boards of 2.5 mm, boards 143 mm wide: at 60° the edges are one board's width further apart.
    [Math.PI / 3, 24 + 5 + 143],
    [Math.PI, 24 + 5 + 2 * 143],
    [1e-9, 29],
  ])("at %d radians is %d mm", (opening, width) => {
    expect(boardWidth({ ...FLAT, opening }, 3, 2.5)).toBeCloseTo(width, 5);
  });
});
