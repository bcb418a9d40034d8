import { describe, expect, it } from "vitest";
import { levelCrossings, stretchesOf, uprightCrossings } from "../../../src/core/geometry/crossings.ts";
import { fc } from "../../seed.ts";
import { isInside, type Point, type Ring } from "./plane.ts";

const SQUARE: Ring = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

/** Its corners point up, down and to both sides. */
const HOLE: Ring = [
  [5, 2],
  [8, 5],
  [5, 8],
  [2, 5],
];

const coordinate = fc.integer({ min: 0, max: 12 });
const rings = fc.array(fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 7 }), {
  minLength: 1,
  maxLength: 3,
});

describe("levelCrossings(rings, y) and uprightCrossings(rings, x)", () => {
  it("run from the least to the greatest", () => {
    expect(levelCrossings([SQUARE, HOLE], 4)).toEqual([0, 3, 7, 10]);
    expect(uprightCrossings([SQUARE, HOLE], 6)).toEqual([0, 3, 7, 10]);
  });

  it("count an edge's upper or left end and not the other", () => {
    expect(levelCrossings([SQUARE], 0)).toEqual([0, 10]);
    expect(levelCrossings([SQUARE], 10)).toEqual([]);
    expect(uprightCrossings([SQUARE], 0)).toEqual([0, 10]);
    expect(uprightCrossings([SQUARE], 10)).toEqual([]);
  });

  it("come in pairs through corners, too", () => {
    fc.assert(
      fc.property(rings, coordinate, (outlines, at) => {
        expect(levelCrossings(outlines, at).length % 2).toBe(0);
        expect(uprightCrossings(outlines, at).length % 2).toBe(0);
      }),
      { numRuns: 500 },
    );
  });
});

// Source: the even-odd rule by the tests' own ray casting.
describe("stretchesOf(crossings)", () => {
  it("pairs crossings in order, and leaves out one without another", () => {
    const stretches = [
      { from: 1, to: 2 },
      { from: 5, to: 9 },
    ];
    expect(stretchesOf([1, 2, 5, 9])).toEqual(stretches);
    expect(stretchesOf([1, 2, 5, 9, 11])).toEqual(stretches);
    expect(stretchesOf([])).toEqual([]);
  });

  it("are what lies inside the outlines, on lines of both ways", () => {
    fc.assert(
      fc.property(rings, coordinate, coordinate, (outlines, line, along) => {
        const [fixed, free] = [line + 0.37, along + 0.61];
        const covers = (stretches: ReturnType<typeof stretchesOf>): boolean =>
          stretches.some(({ from, to }) => from < free && free < to);
        const inside = (point: Point): boolean => isInside(point, outlines);
        expect(covers(stretchesOf(levelCrossings(outlines, fixed)))).toBe(inside([free, fixed]));
        expect(covers(stretchesOf(uprightCrossings(outlines, fixed)))).toBe(inside([fixed, free]));
      }),
      { numRuns: 500 },
    );
  });
});
