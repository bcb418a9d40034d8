import { describe, expect, it } from "vitest";
import type { PatternLeaf } from "../../../src/core/pattern/pattern.ts";
import { linesOf, scoringPlan } from "../../../src/core/plan/scoring.ts";
import { madeLeaf, madePattern } from "./made-pattern.ts";

const level = (depth: number) => ({ name: `${depth}`, depth, line: undefined, background: depth === 20 });
const THREE = [level(10), level(20), level(30)];

function plan(foldStyle: "single" | "stepped", leaves: readonly PatternLeaf[]) {
  return scoringPlan(madePattern({ levels: THREE, leaves, fit: { foldStyle } })).map((row) => [
    row.level,
    row.runs.map(({ first, last }) => `${first}-${last}`).join(" "),
    row.leaves,
  ]);
}

// By hand: border leaves 1, 2 and 9; picture leaves with a span of the front level, or with one of the deepest alone.
const LEAVES = [
  madeLeaf(1, null, [2]),
  madeLeaf(2, null, [2]),
  madeLeaf(3, 1, [2, 1, 2]),
  madeLeaf(4, 3, [2, 3, 2]),
  madeLeaf(5, 5, [3]),
  madeLeaf(9, null, [2]),
];

describe("scoringPlan(pattern)", () => {
  it("presses with single folds the line of every span", () => {
    expect(plan("single", LEAVES)).toEqual([
      [1, "3-3", 1],
      [2, "1-9", 9],
      [3, "4-5", 2],
    ]);
  });

  it("presses with stepped folds the front line, too, on every leaf of more than one level", () => {
    expect(plan("stepped", LEAVES)).toEqual([
      [1, "3-4", 2],
      [2, "1-9", 9],
      [3, "4-5", 2],
    ]);
  });

  // Scoring through up to four leaves that need no line costs less than stopping (common practice, no source).
  it.each([
    ["through four leaves", [1, 6], "1-6", 6],
    ["but not through five", [1, 7], "1-1 7-7", 2],
    ["again and again", [1, 6, 11, 20, 25], "1-11 20-25", 17],
  ])("goes %s", (_, at, runs, leaves) => {
    const made = at.map((leaf) => madeLeaf(leaf, 1, [1]));
    expect(plan("single", made)[0]).toEqual([1, runs, leaves]);
  });

  it("has a row without runs for a line that nobody needs", () => {
    expect(plan("single", [madeLeaf(1, 1, [2])])).toEqual([
      [1, "", 0],
      [2, "1-1", 1],
      [3, "", 0],
    ]);
  });
});

describe("linesOf(leaf, pattern)", () => {
  it.each([
    ["single", [3, 1, 3], [1, 3]],
    ["single", [3, 2, 3], [2, 3]],
    ["stepped", [3, 2, 3], [1, 2, 3]],
    ["stepped", [3], [3]],
    ["stepped", [1], [1]],
  ] as const)("%s folds of levels %j press %j", (foldStyle, levels, lines) => {
    expect(linesOf(madeLeaf(1, 1, levels), madePattern({ fit: { foldStyle } }))).toEqual(lines);
  });
});
