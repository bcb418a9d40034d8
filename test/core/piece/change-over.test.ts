import { describe, expect, it } from "vitest";
import { beginProgress, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { changeOver, patternChange } from "../../../src/core/piece/change-over.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { madePlan, SLANTING } from "../bench/made.ts";

const BEFORE = madePlan(SLANTING).pattern;
const FOLDED = tickUntimed(
  beginProgress({ kit: "made", fit: "", revision: "old", at: leafNumber(1) }),
  [1, 9, 10].map(leafNumber),
);

/** The pattern with a first cut of some leaves moved by 1 mm. */
function moved(leaves: readonly number[]): Pattern {
  return {
    ...BEFORE,
    leaves: BEFORE.leaves.map((one) =>
      leaves.includes(one.leaf)
        ? { ...one, cuts: one.cuts.map((cut, i) => (i === 0 ? { ...cut, at: cut.at + 1 } : cut)) }
        : one,
    ),
  };
}

describe("patternChange(before, after, progress)", () => {
  it("is nothing for the same marks", () => {
    expect(patternChange(BEFORE, structuredClone(BEFORE), FOLDED)).toEqual({ leaves: [], done: [], depths: false });
  });

  it("names the leaves with other marks, and which of them are done", () => {
    expect(patternChange(BEFORE, moved([20, 10]), FOLDED)).toEqual({ leaves: [10, 20], done: [10], depths: false });
  });

  it("names leaves that are folded in one of the two alone", () => {
    const fewer = { ...BEFORE, leaves: BEFORE.leaves.filter(({ leaf }) => leaf !== 1) };
    expect(patternChange(BEFORE, fewer, FOLDED)).toMatchObject({ leaves: [1], done: [1] });
    expect(patternChange(fewer, BEFORE, FOLDED)).toMatchObject({ leaves: [1] });
  });

  it("names every leaf that is folded at a depth that changed", () => {
    const [front, ...rest] = BEFORE.levels;
    const deeper = { ...BEFORE, levels: [{ ...front!, depth: front!.depth + 1 }, ...rest] };
    const { leaves, depths } = patternChange(BEFORE, deeper, FOLDED);
    const shows = BEFORE.leaves.filter(({ spans }) => spans.some(({ level }) => level === 1)).map(({ leaf }) => leaf);
    expect(depths).toBe(true);
    expect(leaves).toEqual(shows);
  });

  it("names leaves with another notch", () => {
    const { pocket } = BEFORE;
    const [first, ...rest] = pocket!.notches;
    const other = { ...BEFORE, pocket: { ...pocket!, notches: [{ ...first!, depth: first!.depth + 5 }, ...rest] } };
    expect(patternChange(BEFORE, other, FOLDED).leaves).toEqual([first!.leaf]);
  });
});

describe("patternChange where corners are folded", () => {
  const before = cornerPattern(cornerKit());

  it("is nothing for the same folds", () => {
    expect(patternChange(before, structuredClone(before), FOLDED)).toEqual({ leaves: [], done: [], depths: false });
  });

  it("names the leaves whose marks moved, and no card that stays", () => {
    const { leaves, depths } = patternChange(before, cornerPattern(cornerKit({ fit: { head: 51 } })), FOLDED);
    const marked = before.leaves.filter(({ fold }) => fold.kind === "corners").map(({ leaf }) => leaf);
    expect([leaves, depths]).toEqual([marked, false]);
  });

  it("lets the card be made anew where whole leaves are folded elsewhere", () => {
    const corner = { levels: [1], empty: "half", dropped: [] } as const;
    const { leaves, done, depths } = patternChange(before, cornerPattern(cornerKit({ fit: { corner } })), FOLDED);
    expect(depths).toBe(true);
    expect(leaves).toContain(1);
    expect(done).toEqual([1, 9, 10]);
  });

  it("changes every leaf where they were cut before", () => {
    const { leaves, depths } = patternChange(BEFORE, before, FOLDED);
    expect([leaves.length, depths]).toEqual([120, true]);
  });
});

describe("changeOver(progress, change, revision)", () => {
  const passed = ["step gauge", "score 1 1-40", "notch 10", "tack 9", "batch 1"];
  const work = { ...FOLDED, passed };

  it("takes ticks, notches and tacks off leaves with other marks, and no others", () => {
    const after = changeOver(work, { leaves: [leafNumber(10)], done: [leafNumber(10)], depths: false }, "new");
    expect(after.ticks.map(({ leaf }) => leaf)).toEqual([1, 9]);
    expect(after.passed).toEqual(["step gauge", "score 1 1-40", "tack 9", "batch 1"]);
    expect(after.revision).toBe("new");
  });

  it("lets steps and lines be made anew where a depth changed", () => {
    const after = changeOver(work, { leaves: [], done: [], depths: true }, "new");
    expect(after.passed).toEqual(["notch 10", "tack 9", "batch 1"]);
  });

  it("does not bring back the ticks of changed leaves with a lost one", () => {
    const lost = [{ leaf: leafNumber(8), cleared: FOLDED.ticks, undone: ["notch 10", "tack 9"] }];
    const after = changeOver({ ...work, lost }, { leaves: [leafNumber(10)], done: [], depths: false }, "new");
    expect(after.lost[0]!.cleared.map(({ leaf }) => leaf)).toEqual([1, 9]);
    expect(after.lost[0]!.undone ?? []).not.toContain("notch 10");
  });
});
