import { describe, expect, it } from "vitest";
import { batchesOf, isCheckpoint } from "../../../src/core/plan/batches.ts";
import { fc } from "../../seed.ts";
import { madeLeaf, madePattern } from "./made-pattern.ts";

/** Two border leaves, then `count` picture leaves from leaf 3 on, then two more; in a book of leaves of 0.15 mm. */
function pattern(count: number) {
  const leaf = (_: unknown, i: number) => madeLeaf(i + 1, i < 2 || i >= count + 2 ? null : 2 * i - 3, [1]);
  return madePattern({ leaves: Array.from({ length: count + 4 }, leaf) });
}

describe("batchesOf(pattern, most, tile)", () => {
  // By hand; batches of 15 to 20 leaves are common practice, no source.
  it.each([
    [20, 20, [[1, 3, 22, 20]]],
    [
      21,
      20,
      [
        [1, 3, 13, 11],
        [2, 14, 23, 10],
      ],
    ],
    [
      10,
      4,
      [
        [1, 3, 5, 3],
        [2, 6, 9, 4],
        [3, 10, 12, 3],
      ],
    ],
    [1, 5, [[1, 3, 3, 1]]],
  ])("%d leaves in batches of at most %d", (count, most, expected) => {
    const batches = batchesOf(pattern(count), most, undefined);
    expect(batches.map(({ number, first, last, count: size }) => [number, first.leaf, last.leaf, size])).toEqual(
      expected,
    );
  });

  it("are even, in order, and hold every picture leaf once", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 200 }), fc.integer({ min: 5, max: 60 }), (count, most) => {
        const batches = batchesOf(pattern(count), most, undefined);
        const sizes = batches.map((batch) => batch.count);
        expect(batches).toHaveLength(Math.ceil(count / most));
        expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
        let next = 3;
        for (const { first, last, count: size } of batches) {
          expect([first.leaf, last.leaf]).toEqual([next, next + size - 1]);
          next += size;
        }
        expect(next).toBe(count + 3);
      }),
      { numRuns: 100 },
    );
  });

  // By hand: before leaf 3 two leaves of 0.15 mm are turned, before leaf 14 thirteen: 0.3 and 1.95 mm.
  it.each([
    [undefined, [undefined, undefined]],
    [0.15, [2, 13]],
    [0.5, [1, 4]],
    [1.5, [0, 1]],
  ])("pack up by one caliper for each leaf that is turned, in pieces of %s mm", (tile, tiles) => {
    const batches = batchesOf(pattern(21), 20, tile);
    expect(batches.map(({ packing }) => packing)).toEqual([expect.closeTo(0.3, 9), expect.closeTo(1.95, 9)]);
    expect(batches.map((batch) => batch.tiles)).toEqual(tiles);
  });
});

describe("isCheckpoint(leaf)", () => {
  it("is every tenth picture leaf, and no border leaf", () => {
    const { leaves } = pattern(31);
    expect(leaves.filter(isCheckpoint).map(({ leaf, patternPage }) => [leaf, patternPage])).toEqual([
      [12, 19],
      [22, 39],
      [32, 59],
    ]);
  });
});
