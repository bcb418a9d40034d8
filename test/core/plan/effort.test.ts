import { describe, expect, it } from "vitest";
import type { Rates } from "../../../src/core/kit/kit.ts";
import type { PatternLeaf } from "../../../src/core/pattern/pattern.ts";
import { benchCutDepth } from "../../../src/core/plan/bench.ts";
import { type Counts, countsOf, type Difficulty, difficultyOf, effortOf } from "../../../src/core/plan/effort.ts";
import { foldsOf, leafMinutes, leafSeconds } from "../../../src/core/plan/leaf-effort.ts";
import { tackList } from "../../../src/core/plan/tack-list.ts";
import { madeLeaf, madePattern, madePocket, madeWindow } from "./made-pattern.ts";

const tack = (from: number, to: number) => ({ from, to });

/** Border leaf 4; picture leaves 5 to 14 of three spans, the tenth of which is a checkpoint; border leaf 15. */
const LEAVES: readonly PatternLeaf[] = [
  madeLeaf(4, null, [2]),
  ...Array.from({ length: 10 }, (_, i) => madeLeaf(5 + i, 2 * i + 1, [2, 1, 2])),
  { ...madeLeaf(15, null, [2]), tacks: [tack(0, 3), tack(10, 12.9), tack(20, 60)] },
];
const PATTERN = madePattern({ leaves: LEAVES });

const RATES: Rates = {
  leaf: 1,
  score: 1000,
  mark: 10,
  cut: 20,
  fold: 100,
  check: 3,
  tack: 60,
  notch: 7,
  part: 9999,
  first: 2,
};

describe("countsOf(pattern)", () => {
  // By hand: 12 leaves; two cuts on each of ten; three folds on those, one on the others; both lines on ten, one on all.
  const plain = { leaves: 12, marks: 20, cuts: 20, checks: 1, tacks: 2, notches: 0, parts: 0 };

  it("counts what is to do on each leaf", () => {
    expect(countsOf(PATTERN)).toEqual({ ...plain, scores: 10 + 12, folds: 32 });
  });

  it("counts stepped folds once for the whole leaf, and once for each deeper span", () => {
    expect(countsOf(madePattern({ leaves: LEAVES, fit: { foldStyle: "stepped" } })).folds).toBe(10 * (1 + 2) + 2);
  });

  it("counts notches, and parts as often as they are cut", () => {
    const whole = madePattern({ leaves: LEAVES, pocket: madePocket(6, 7, 8), window: madeWindow() });
    expect(countsOf(whole)).toMatchObject({ ...plain, notches: 3, parts: 9 });
  });
});

describe("foldsOf(leaf, pattern)", () => {
  it.each([
    ["single", [2, 1, 2, 3], 4],
    ["single", [2], 1],
    ["stepped", [2, 1, 2, 3], 4],
    ["stepped", [1, 2, 1], 2],
    ["stepped", [2, 3, 2], 4],
    ["stepped", [2], 1],
    ["stepped", [1], 1],
  ] as const)("%s folds of spans %j are %d", (foldStyle, levels, folds) => {
    expect(foldsOf(madeLeaf(1, 1, levels), madePattern({ fit: { foldStyle } }))).toBe(folds);
  });
});

describe("leafSeconds(pattern, rates) and leafMinutes(pattern, rates)", () => {
  const whole = madePattern({ leaves: LEAVES, pocket: madePocket(6) });

  // By hand: a border leaf 1 + 100; a picture leaf 1 + 2 × 30 + 3 × 100; 3 for the check.
  it("count turning, marks, cuts, folds and check of each leaf", () => {
    const seconds = leafSeconds(whole, RATES);
    expect(seconds.map(({ leaf }) => leaf)).toEqual(LEAVES);
    expect(seconds.map((one) => one.seconds)).toEqual([101, 361, 361, 361, 361, 361, 361, 361, 361, 361, 364, 101]);
  });

  it("add a leaf's own notch and tacks, in minutes", () => {
    const minutes = leafMinutes(whole, RATES).map((one) => one.minutes);
    expect(minutes.slice(0, 2)).toEqual([101 / 60, 361 / 60]);
    expect(minutes[2]).toBeCloseTo((361 + 7) / 60, 12);
    expect(minutes.at(-1)).toBeCloseTo(101 / 60 + 2, 12);
  });

  it("are with score lines and parts the whole effort", () => {
    const { minutes, byStage } = effortOf(countsOf(whole), RATES);
    const leaves = leafMinutes(whole, RATES).reduce((sum, one) => sum + one.minutes, 0);
    expect(leaves + byStage.score + byStage.part).toBeCloseTo(minutes, 9);
  });
});

describe("effortOf(counts, rates)", () => {
  const counts: Counts = {
    leaves: 10,
    scores: 20,
    marks: 30,
    cuts: 40,
    folds: 50,
    checks: 6,
    tacks: 70,
    notches: 8,
    parts: 9,
  };
  const rates = { leaf: 6, score: 3, mark: 4, cut: 6, fold: 12, check: 10, tack: 6, notch: 30, part: 120, first: 2 };

  it("is count times seconds for each stage, in minutes, and their sum", () => {
    const { byStage, minutes } = effortOf(counts, rates);
    expect(byStage).toEqual({
      turn: 1,
      score: 1,
      mark: 2,
      cut: 4,
      fold: 10,
      check: 1,
      tack: 7,
      notch: 4,
      part: 18,
    });
    expect(minutes).toBe(48);
  });
});

describe("tackList(pattern)", () => {
  it("glues what is as long as the least tab, and counts the rest", () => {
    const { glued, held } = tackList(PATTERN);
    expect(glued.map(({ from, to, leaf }) => [leaf.leaf, from, to])).toEqual([
      [15, 0, 3],
      [15, 20, 60],
    ]);
    expect(held).toBe(1);
  });

  it("counts the least tab as it is but for binary dust", () => {
    const leaves = [{ ...madeLeaf(1, 1, [1]), tacks: [tack(0.1, 0.1 + 3 - 1e-7), tack(5, 8 - 1e-5)] }];
    expect(tackList(madePattern({ leaves })).glued).toHaveLength(1);
  });
});

describe("benchCutDepth(pattern, depth)", () => {
  it.each([
    ["single", 24],
    ["stepped", 14],
  ] as const)("of %s folds at 24 mm, with the front line at 10, is %d", (foldStyle, depth) => {
    expect(benchCutDepth(madePattern({ fit: { foldStyle } }), 24)).toBe(depth);
  });
});

describe("difficultyOf(pattern, effort)", () => {
  const { levels } = PATTERN;
  const three = [...levels, { ...levels[1]!, depth: 30 }];
  // Leaves of so many cuts, without and with borders of none.
  const cut = (cuts: number) =>
    madeLeaf(
      5,
      1,
      Array.from({ length: cuts + 1 }, (_, i) => 1 + (i % 2)),
    );
  const leaves = (...cuts: readonly number[]) => [madeLeaf(4, null, [2]), ...cuts.map(cut), madeLeaf(9, null, [2])];

  it.each<[Difficulty, string, number, readonly PatternLeaf[], typeof levels]>([
    ["easy", "two levels, 6 cuts a leaf, 5 hours", 5, leaves(6, 6), levels],
    ["moderate", "a minute more", 5 + 1 / 60, leaves(6, 6), levels],
    ["moderate", "a few cuts more", 5, leaves(6, 7), levels],
    ["moderate", "three levels", 5, leaves(6, 6), three],
    ["moderate", "three levels and 9 hours", 9, leaves(6, 7), three],
    ["demanding", "a minute more", 9 + 1 / 60, leaves(2), levels],
    ["demanding", "more cuts", 1, leaves(6, 7, 7), levels],
    ["easy", "no picture leaf", 1, leaves(), levels],
  ])("calls %s: %s", (word, _, hours, made, own) => {
    const effort = { ...effortOf(countsOf(PATTERN), RATES), minutes: 60 * hours };
    expect(difficultyOf(madePattern({ leaves: made, levels: own }), effort)).toBe(word);
  });
});
