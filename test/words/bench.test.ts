import { describe, expect, it } from "vitest";
import { jumpToLeaf, jumpToPage } from "../../src/core/bench/jump.ts";
import { leafNumber } from "../../src/core/book/leaf-number.ts";
import { holdWidthWords, jumpAnswer, leafWords, thicknessAllowed, timeWords } from "../../src/words/bench.ts";
import { fixturePlan } from "../core/bench/fixture-plan.ts";

const MINUTE = 60_000;
const gull = fixturePlan("little-gull", { lostLeaves: [leafNumber(40)] });

describe("leafWords(plan, leaf)", () => {
  it("names a leaf by its page, or says which unnumbered one it is", () => {
    expect(leafWords(gull, leafNumber(39))).toBe("p. 73 (leaf 39)");
    expect(leafWords(gull, leafNumber(2))).toBe("front leaf 2 of 2 (leaf 2)");
    expect(leafWords(fixturePlan("tide-and-lamp"), leafNumber(53))).toMatch(/^plate \d of 4 after p\. 96 \(leaf 53\)$/);
  });
});

describe("jumpAnswer(jump)", () => {
  it.each([
    [jumpToPage(gull, 219), "Page 219 is not in this book: pages run from 1 to 218."],
    [jumpToPage(gull, 75), "Page 75 is on leaf 40. Leaf 40 is left out."],
    [jumpToLeaf(gull, leafNumber(113)), "Leaf 113 is not in this book: it has 112 leaves."],
    [jumpToLeaf(gull, leafNumber(2.5)), "Leaf 2.5 is not in this book: it has 112 leaves."],
    [jumpToLeaf(gull, leafNumber(40)), "Leaf 40 is left out."],
    [
      {
        page: undefined,
        obstacle: { kind: "unfolded", leaf: leafNumber(77), first: leafNumber(1), last: leafNumber(76) },
      } as const,
      "Leaf 77 stays unfolded: folded leaves run from 1 to 76.",
    ],
    [jumpToLeaf(gull, leafNumber(41)), ""],
  ])("%j: %s", (jump, words) => {
    expect(jumpAnswer(jump)).toBe(words);
  });
});

describe("thicknessAllowed(bounds, units)", () => {
  it.each([
    ["mm", "Allowed: 2.4\u00a0mm to 30.6\u00a0mm. 20 leaves of this book are 2.4\u00a0mm before they are folded."],
    ["in", "Allowed: 3/32\u00a0in to 1 7/32\u00a0in. 20 leaves of this book are 3/32\u00a0in before they are folded."],
  ] as const)("in %s", (units, words) => {
    expect(thicknessAllowed({ leaves: 20, least: 2.4, most: 30.6 }, units)).toBe(words);
  });
});

describe("holdWidthWords(mm, units)", () => {
  it("is for a ruler: whole millimetres, sixteenths of an inch", () => {
    expect(holdWidthWords(122.2, "mm")).toBe("122\u00a0mm");
    expect(holdWidthWords(122.2, "in")).toBe("4 13/16\u00a0in");
  });
});

describe("timeWords(ms, round)", () => {
  it.each([
    [29_999, "exact", "0 min"],
    [59 * MINUTE, "about", "59 min"],
    [61 * MINUTE, "exact", "1 h 01 min"],
    [62 * MINUTE, "about", "1 h 00 min"],
    [63 * MINUTE, "about", "1 h 05 min"],
    [600 * MINUTE, "exact", "10 h 00 min"],
  ] as const)("%d ms, %s: %s", (ms, round, words) => {
    expect(timeWords(ms, round)).toBe(words);
  });
});
