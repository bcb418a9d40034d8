import { describe, expect, it } from "vitest";
import {
  type Affine,
  compose,
  determinant,
  IDENTITY,
  largestStretch,
  mapPoint,
  mapVector,
  translation,
} from "../../../src/core/geometry/affine.ts";

/** Six primes, so that no two terms are alike. */
const M: Affine = [2, 3, 5, 7, 11, 13];
const N: Affine = [17, 19, 23, 29, 31, 37];

// By hand, in the order of SVG's matrix(a b c d e f).
describe("an affine map", () => {
  it("takes points with its shift and directions without", () => {
    expect(mapPoint(M, [1, 2])).toEqual([23, 30]);
    expect(mapVector(M, [1, 2])).toEqual([12, 17]);
    expect(mapPoint(IDENTITY, [4, -5])).toEqual([4, -5]);
    expect(mapPoint(translation(3, -2), [4, -5])).toEqual([7, -7]);
  });

  it("composed with another does the inner one first", () => {
    expect(compose(M, N)).toEqual([129, 184, 191, 272, 258, 365]);
    expect(mapPoint(compose(M, N), [1, -1])).toEqual(mapPoint(M, mapPoint(N, [1, -1])));
  });

  it("changes areas by its determinant", () => {
    expect([determinant(M), determinant(N), determinant([2, 4, 1, 2, 9, 9])]).toEqual([-1, 17 * 29 - 19 * 23, 0]);
  });

  // The greater singular value; of a shear by 1 it is the golden ratio.
  it.each([
    [[3, 0], [0, 2], 3],
    [[0, 2], [-5, 0], 5],
    [[1, 0], [1, 1], (1 + Math.sqrt(5)) / 2],
    [[1, 1], [0, 1], (1 + Math.sqrt(5)) / 2],
    [[3, 4], [6, 8], Math.sqrt(125)],
    [[-2, 0], [0, -1], 2],
  ] as const)("with columns %j and %j stretches by %d at most", (u, v, most) => {
    expect(largestStretch(u, v)).toBeCloseTo(most, 12);
  });
});
