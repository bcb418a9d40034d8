import { describe, expect, it } from "vitest";
import type { PatternLeaf } from "../../../src/core/pattern/pattern.ts";
import { tackBatches } from "../../../src/core/plan/tack-batches.ts";
import { madeLeaf, madePattern } from "./made-pattern.ts";

const loose = (leaf: PatternLeaf): PatternLeaf => ({ ...leaf, tacks: [{ from: 20, to: 60 }] });
const picture = (leaf: number): PatternLeaf => madeLeaf(leaf, 2 * leaf - 9, [2, 1, 2]);

/** Border leaf 4, picture leaves 5 to 14, border leaf 15, with a tack on some of them. */
const withTacks = (...leaves: readonly number[]): ReturnType<typeof madePattern> =>
  madePattern({
    leaves: [
      madeLeaf(4, null, [2]),
      ...Array.from({ length: 10 }, (_, i) => picture(5 + i)),
      madeLeaf(15, null, [2]),
    ].map((leaf) => (leaves.includes(leaf.leaf) ? loose(leaf) : leaf)),
  });

// By hand: batches of at most 4 leaves are 5 to 7, 8 to 11 and 12 to 14.
describe("tackBatches(pattern, most)", () => {
  it.each([
    ["nothing is loose", [], 0],
    ["all is in one batch", [5, 6, 7], 1],
    ["each batch has some", [7, 8, 12], 3],
    ["a border leaf follows the last batch", [4, 6, 14, 15], 2],
  ] as const)("counts batches where %s", (_, leaves, count) => {
    expect(tackBatches(withTacks(...leaves), 4)).toBe(count);
  });
});
