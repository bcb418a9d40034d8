import { describe, expect, it } from "vitest";
import type { Point } from "../../../src/core/geometry/point.ts";
import { packRings, unpackRings } from "../../../src/output/data/packed-rings.ts";
import { fc } from "../../seed.ts";

/** Coordinates of some decimals. */
const places = (decimals: number) =>
  fc.integer({ min: -(10 ** 12), max: 10 ** 12 }).map((whole) => whole / 10 ** decimals);

const outlines = fc
  .integer({ min: 0, max: 12 })
  .chain((decimals) =>
    fc.array(fc.array(fc.tuple(places(decimals), places(decimals)), { maxLength: 40 }), { maxLength: 5 }),
  );

describe("packed outlines", () => {
  it("come back to the last digit", () => {
    fc.assert(
      fc.property(outlines, (rings) => {
        const packed = packRings(rings);
        expect(unpackRings(packed)).toEqual(rings.map((ring) => ring.map(([x, y]) => [x + 0, y + 0])));
        if (rings.length > 0) expect(typeof packed[0]).toBe("number");
      }),
    );
  });

  it("stay as they are where no twelve decimals tell them", () => {
    const rings: Point[][] = [
      [
        [0, 0],
        [1 / 3, 0],
        [0, 1],
      ],
    ];
    expect(packRings(rings)).toBe(rings);
    expect(unpackRings(rings)).toBe(rings);
  });

  // By hand: 8, 16, 24, 33 have the differences 8, 8, 8, 9, then 8, 0, 0, 1, then 8, −8, 0, 1; 16, 15, 0 and 2 stand for these.
  it("tell third differences, five bits a letter", () => {
    expect(
      packRings([
        [
          [0.8, 0],
          [1.6, 0],
          [2.4, 0],
          [3.3, 0],
        ],
      ]),
    ).toEqual([1, ["QPAC", "AAAA"]]);
  });

  it("take a letter a coordinate on the even steps of a curve, kept to 1e-9", () => {
    const at = (t: number): number => Number((40 * t ** 3 - 90 * t ** 2 + 120 * t).toFixed(9));
    const ring = Array.from({ length: 401 }, (_, i): Point => [at(i / 400), 0]);
    const [, outline] = packRings([ring]) as [number, [string, string]];
    // 40 · 6 / 400³ are 3,750 units: three letters each.
    expect(outline[0].length).toBeLessThan(3 * 401 + 30);
  });
});
