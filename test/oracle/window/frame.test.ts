import { describe, expect, it } from "vitest";
import {
  areaOf,
  circleRing,
  distanceTo,
  ellipsePerimeter,
  extentOf,
  isInside,
  lengthOf,
  type Point,
  pointsAlong,
  type Ring,
  shoelace,
} from "../../core/geometry/plane.ts";
import type { Changes } from "../../core/light/disc-kit.ts";
import { pictureSides } from "../../core/light/standing.ts";
import { alongTips, discWindow, frameOf, onPanel, partOf } from "./window.ts";

/** How far a cut outline may run from the true one. */
const CHORD = 0.02;

// Source: closed form. A disc of radius R grown by d is the disc of R + d; displayed, 0.65 mm to a unit of the picture.
describe.each([2, 3, 6.5])("a flat base frame of discs, lip %d mm", (lip) => {
  const pattern = discWindow({ insert: { panel: "flat", lip } });
  const { rim, window } = frameOf(partOf(pattern, "base frame"));
  const { left, right } = pictureSides(pattern);
  const centre: Point = [(left + right) / 2, 40 + 65];

  it.each([
    ["its rim", rim, 61.75 + lip],
    ["its window", window, 45.5 - lip],
  ] as const)("has a true circle for %s", (_, ring, radius) => {
    for (const [x, y] of pointsAlong(ring, 0.25))
      expect(Math.abs(Math.hypot(x - centre[0], y - centre[1]) - radius)).toBeLessThan(CHORD);
    expect(Math.abs(Math.abs(shoelace(ring)) / (Math.PI * radius ** 2) - 1)).toBeLessThan(0.001);
    expect(Math.abs(lengthOf(ring) / (2 * Math.PI * radius) - 1)).toBeLessThan(0.001);
  });

  it("has size, area and cutting length as published", () => {
    const frame = partOf(pattern, "base frame");
    const [outer, inner] = [61.75 + lip, 45.5 - lip];
    expect(frame.width).toBeCloseTo(2 * outer, 1);
    expect(frame.height).toBeCloseTo(2 * outer, 1);
    expect(Math.abs(frame.area / (Math.PI * (outer ** 2 - inner ** 2)) - 1)).toBeLessThan(0.001);
    expect(Math.abs(frame.perimeter / (2 * Math.PI * (outer + inner)) - 1)).toBeLessThan(0.001);
    expect(Math.abs(pattern.insert.frameLength / (2 * Math.PI * outer) - 1)).toBeLessThan(0.001);
  });
});

// Source: parallel curves of a convex curve at distance d have length L + 2πd and enclose A + Ld + πd² (Steiner; CRC Concise
// Encyclopedia of Mathematics, "Parallel Curve"); values for half axes 70 and 50 and d = ±5 computed with mpmath.
describe("a flat base frame of an ellipse of 70 by 50 mm", () => {
  const shapes = '<ellipse id="rim" cx="75" cy="60" rx="70" ry="50"/><circle id="well" cx="155" cy="115" r="4"/>';
  const pattern = discWindow({
    shapes,
    viewBox: "0 0 160 120",
    fit: { height: 120, head: 50 },
    insert: { panel: "flat", lip: 5 },
  });
  const { rim, window } = frameOf(partOf(pattern, "base frame"));

  it.each([
    ["rim outward", rim, 411.02961588354, 12972.182550642, 75, 55],
    ["window inward", window, 348.19776281174, 9176.0456571658, 65, 45],
  ] as const)("runs parallel to it, %s", (_, ring, length, area, a, b) => {
    expect(Math.abs(lengthOf(ring) - length)).toBeLessThan(0.05);
    expect(Math.abs(areaOf([ring]) - area)).toBeLessThan(CHORD * length * 0.5);
    expect(Math.abs(lengthOf(ring) - ellipsePerimeter(a, b))).toBeGreaterThan(0.1);
    expect(Math.abs(areaOf([ring]) - Math.PI * a * b)).toBeGreaterThan(8);
  });
});

const NOTCHED: Ring = [
  [12, 20],
  [188, 20],
  [188, 95],
  [150, 104],
  [188, 112],
  [180, 180],
  [110, 180],
  [100, 150],
  [90, 180],
  [12, 180],
];

const HOLES: Readonly<Record<string, { readonly rim: string; readonly outline: Ring; readonly well: Ring }>> = {
  discs: {
    rim: '<circle id="rim" cx="100" cy="100" r="95"/>',
    outline: circleRing(100, 100, 95, 3000),
    well: circleRing(100, 100, 70, 3000),
  },
  "a notched plate with a square hole": {
    rim: `<polygon id="rim" points="${NOTCHED.join(" ")}"/>`,
    outline: NOTCHED,
    well: [
      [50, 50],
      [140, 50],
      [140, 130],
      [50, 130],
    ],
  },
};

const PANELS: readonly (readonly [name: string, changes: Changes])[] = [
  ["flat", { insert: { panel: "flat" } }],
  ["wrap", { insert: { panel: "wrap" } }],
  [
    "wrap, rtl, rounded spine, borders of 3 and 30 leaves",
    { insert: { panel: "wrap" }, book: { direction: "rtl" }, fit: { spine: "rounded", borderLeaves: [3, 30] } },
  ],
  ["flat, borders of 3 and 30 leaves", { insert: { panel: "flat" }, fit: { borderLeaves: [3, 30] } }],
];

// Source: definition. Each point of an outline grown or shrunk by the lip lies at the lip's distance from the outline it came
// from; unrolled coordinates are summed along the front tips in the test.
describe.each(Object.entries(HOLES))("a base frame of %s", (_, { rim: rimShape, outline, well }) => {
  it.each(PANELS)("runs at the lip's distance from the region and its hole, %s", (_, changes) => {
    const wellShape = `<polygon id="well" points="${well.join(" ")}"/>`;
    const pattern = discWindow({ ...changes, shapes: rimShape + wellShape });
    const { rim, window } = frameOf(partOf(pattern, "base frame"));
    const [region, hole] = [densely(pattern, outline), densely(pattern, well)];
    for (const point of pointsAlong(rim, 0.7)) {
      expect(Math.abs(distanceTo(point, [region]) - pattern.insert.lip)).toBeLessThan(CHORD);
      expect(isInside(point, [region])).toBe(false);
    }
    for (const point of pointsAlong(window, 0.7)) {
      expect(Math.abs(distanceTo(point, [hole]) - pattern.insert.lip)).toBeLessThan(CHORD);
      expect(isInside(point, [hole])).toBe(true);
    }
  });
});

function densely(pattern: Parameters<typeof onPanel>[0], ring: Ring): Ring {
  return onPanel(pattern, pointsAlong(ring, 0.25));
}

describe("the unrolled panel", () => {
  it("is wider than the flat one, by the arc over its chord, and as high", () => {
    const [flat, wrap] = (["flat", "wrap"] as const).map((panel) => discWindow({ insert: { panel } }));
    const [seen, unrolled] = [partOf(flat!, "base frame"), partOf(wrap!, "base frame")];
    const { left, right } = pictureSides(wrap!);
    const ends = [left, right].map((edge) => edge + ((right - left) / 200) * (edge < 0 ? 5 : -5));
    const expected = alongTips(wrap!, ends[1]!) - alongTips(wrap!, ends[0]!) + 6;
    expect(Math.abs(unrolled.width - expected)).toBeLessThan(0.05);
    expect(unrolled.width).toBeGreaterThan(seen.width + 1);
    expect(Math.abs(unrolled.height - seen.height)).toBeLessThan(0.05);
    const other = (name: string) => [partOf(flat!, name).width, partOf(wrap!, name).width] as const;
    for (const name of ["door", "glazing", "decoration guide"]) expect(other(name)[1]).toBeGreaterThan(other(name)[0]);
  });

  it("keeps the picture's middle at 0 where the picture stands in the book's middle", () => {
    const { rim } = frameOf(partOf(discWindow(), "base frame"));
    const { left, right } = extentOf([rim]);
    expect(Math.abs(left + right)).toBeLessThan(0.02);
  });
});

describe("insert.outline", () => {
  it("may be the background, whose outline is the picture's box", () => {
    const shapes =
      '<rect id="rim" x="2" y="2" width="20" height="20"/><rect id="well" x="50" y="40" width="100" height="120"/>';
    const pattern = discWindow({ shapes, insert: { outline: "wall", panel: "flat" } });
    const frame = partOf(pattern, "base frame");
    expect(frame.width).toBeCloseTo(130 + 6, 1);
    expect(frame.height).toBeCloseTo(130 + 6, 1);
    const { window } = frameOf(frame);
    const { width, height } = extentOf([window]);
    expect(width).toBeCloseTo(65 - 6, 1);
    expect(height).toBeCloseTo(78 - 6, 1);
  });
});
