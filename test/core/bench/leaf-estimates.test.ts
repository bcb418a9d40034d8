import { describe, expect, it } from "vitest";
import { leafEstimates } from "../../../src/core/bench/leaf-estimates.ts";
import { madeLeaf, madePattern, madePocket } from "../plan/made-pattern.ts";
import { RATES } from "./made-rates.ts";

describe("leafEstimates(pattern, rates)", () => {
  const rates = RATES;
  const levels = [10, 20, 30].map((depth) => ({ name: `${depth}`, depth, line: undefined, background: depth === 20 }));
  const leaves = [
    madeLeaf(4, null, [2]),
    madeLeaf(5, 1, [3, 2, 3]),
    { ...madeLeaf(6, 19, [1, 2, 1]), tacks: [{ from: 0, to: 60 }] },
  ];

  // By hand: a border leaf is turned and folded once; two marks and cuts make three folds; page 19 is a checkpoint.
  it.each([
    ["single", [22, 12 + 2 * 11 + 30, 12 + 2 * 11 + 30 + 20]],
    // A fold of the front line, too; but no second fold of what lies at it.
    ["stepped", [22, 12 + 2 * 11 + 40, 12 + 2 * 11 + 20 + 20]],
  ] as const)(
    "adds the rates for what a leaf needs; lines, notch and tacks are other work: %s folds",
    (foldStyle, seconds) => {
      const pattern = madePattern({ levels, leaves, pocket: madePocket(5), fit: { foldStyle } });
      expect([...leafEstimates(pattern, rates)]).toEqual(seconds.map((one, i) => [4 + i, 1000 * one]));
    },
  );
});
