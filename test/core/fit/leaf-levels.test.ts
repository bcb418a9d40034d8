import { describe, expect, it } from "vitest";
import { levelsOfLeaf } from "../../../src/core/fit/leaf-levels.ts";
import type { Columns } from "../../../src/core/picture/column.ts";
import { spansOf } from "../spans/exact-leaf.ts";

const PLACING = { head: 40, height: 100, leafHeight: 200, pictureHeight: 10, background: 2 };

/** A picture of vertical bands: at each x the runs that are given for it. */
const bands = (columns: Record<number, [to: number, level: number][]>): Columns => {
  const runs = Object.values(columns);
  const starts = Int32Array.from([0, ...runs], (_, i) => runs.slice(0, i).flat().length);
  const ends = Float64Array.from(runs.flat(), ([to]) => to);
  const levels = Int32Array.from(runs.flat(), ([, level]) => level);
  return { starts, ends, levels, at: (x) => Object.keys(columns).indexOf(String(x)) };
};

describe("levelsOfLeaf(x, columns, placing)", () => {
  it("has the background above and below the picture and joins it", () => {
    const read = bands({
      1: [
        [2, 2],
        [7, 1],
        [10, 2],
      ],
    });
    expect(spansOf(levelsOfLeaf([1, 1], read, PLACING))).toEqual([
      { from: 0, to: 60, level: 2 },
      { from: 60, to: 110, level: 1 },
      { from: 110, to: 200, level: 2 },
    ]);
  });

  it("shows the proudest level whose own tip lies on a part of at most that level", () => {
    // Level 1 is seen at x 1, level 2 at x 2, level 3 at x 3.
    const read = bands({
      1: [
        [3, 3],
        [5, 1],
        [10, 2],
      ],
      2: [
        [2, 1],
        [6, 3],
        [10, 2],
      ],
      3: [
        [1, 2],
        [10, 3],
      ],
    });
    expect(spansOf(levelsOfLeaf([1, 2, 3], read, { ...PLACING, background: 3 }))).toEqual([
      { from: 0, to: 40, level: 3 },
      { from: 40, to: 60, level: 2 },
      { from: 60, to: 70, level: 3 },
      { from: 70, to: 90, level: 1 },
      { from: 90, to: 100, level: 3 },
      { from: 100, to: 140, level: 2 },
      { from: 140, to: 200, level: 3 },
    ]);
  });

  it("has no span outside the picture when it fills the leaf", () => {
    const read = bands({
      1: [
        [4, 1],
        [10, 2],
      ],
    });
    expect(spansOf(levelsOfLeaf([1, 1], read, { ...PLACING, head: 0, height: 200 }))).toEqual([
      { from: 0, to: 80, level: 1 },
      { from: 80, to: 200, level: 2 },
    ]);
  });
});
