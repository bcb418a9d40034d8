import { describe, expect, it } from "vitest";
import { fanAt, panelIn, shapeAt } from "../../../src/page/view3d/pose.ts";
import { dataOf, publishedDemo } from "./made.ts";

const pattern = publishedDemo("harbour-moon");
const data = dataOf(pattern);
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Front tips of a flat-spined book at an opening, by the formula of the fan. */
function tips(opening: number): { x: number; z: number }[] {
  const { leaves: N, blockThickness: T, leafWidth: W } = pattern.book;
  const R = W - pattern.levels[0].depth;
  return Array.from({ length: pattern.fit.lastLeaf - pattern.fit.firstLeaf + 1 }, (_, i) => {
    const share = (pattern.fit.firstLeaf - 1 + i + 0.5) / N - 0.5;
    return { x: T * share + R * Math.sin(opening * share), z: R * Math.cos(opening * share) };
  });
}

/** From half a pitch before the first tip to half a pitch behind the last. */
function extent(opening: number): number {
  const x = tips(opening).map((tip) => tip.x);
  const n = x.length;
  return x[n - 1]! - x[0]! + (x[1]! - x[0]!) / 2 + (x[n - 1]! - x[n - 2]!) / 2;
}

describe("shapeAt(data, opening)", () => {
  it("is the published width, and true, at the kit's own opening", () => {
    const { width, stretch } = shapeAt(data, data.fit.opening);
    expect(width).toBeCloseTo(pattern.fit.width, 2);
    expect(stretch).toBeCloseTo(pattern.fit.stretch, 9);
  });

  it.each([20, 45, 60, 90, 120, 150, 180])("at %d° is the extent of the front tips' cells", (degrees) => {
    const { width, stretch } = shapeAt(data, radians(degrees));
    expect(width).toBeCloseTo(extent(radians(degrees)), 6);
    expect(stretch).toBeCloseTo(extent(radians(degrees)) / extent(pattern.fit.opening), 9);
  });
});

describe("panelIn(data, fan, panel)", () => {
  const fan = fanAt(data, data.fit.opening);

  it("wraps along the tips: lengths are kept, and out is square to the curve", () => {
    const panel = panelIn(data, fan, "wrap");
    const places = tips(data.fit.opening);
    let arc = 0;
    const middle = places.findIndex((tip) => tip.x > 0);
    const start = panel(0);
    expect(start.x).toBeCloseTo(0, 6);
    arc += Math.hypot(places[middle]!.x - start.x, places[middle]!.z - start.z);
    for (let i = middle; i + 1 < places.length; i += 1) {
      expect(panel(arc).x).toBeCloseTo(places[i]!.x, 4);
      expect(panel(arc).z).toBeCloseTo(places[i]!.z, 4);
      const { outX, outZ } = panel(arc);
      expect(Math.hypot(outX, outZ)).toBeCloseTo(1, 9);
      expect(outX * places[i]!.x + outZ * places[i]!.z).toBeGreaterThan(0.9 * Math.hypot(places[i]!.x, places[i]!.z));
      arc += Math.hypot(places[i + 1]!.x - places[i]!.x, places[i + 1]!.z - places[i]!.z);
    }
  });

  it("lies flat before the foremost tip", () => {
    const panel = panelIn(data, fan, "flat");
    const foremost = Math.max(...tips(data.fit.opening).map((tip) => tip.z));
    expect(panel(-40)).toEqual({ x: -40, z: expect.closeTo(foremost, 6), outX: 0, outZ: 1 });
  });
});
