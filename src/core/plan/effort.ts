import type { Rates } from "../kit/kit.ts";
import { type Pattern, pictureLeaves } from "../pattern/pattern.ts";
import { partsOf } from "../window/window.ts";
import { isCheckpoint } from "./batches.ts";
import { foldsOf } from "./leaf-effort.ts";
import { scoringPlan } from "./scoring.ts";
import { tackList } from "./tack-list.ts";

/** How much there is to do. */
export interface Counts {
  readonly leaves: number;
  readonly scores: number;
  readonly marks: number;
  readonly cuts: number;
  readonly folds: number;
  readonly checks: number;
  readonly tacks: number;
  readonly notches: number;
  /** Parts of the window to cut out. */
  readonly parts: number;
}

/** Minutes in all and by stage; an estimate from counts and the kit's own rates. */
export interface Effort {
  readonly minutes: number;
  readonly byStage: Readonly<
    Record<"turn" | "score" | "mark" | "cut" | "fold" | "check" | "tack" | "notch" | "part", number>
  >;
}

/** Counts of a pattern. */
export function countsOf(pattern: Pattern): Counts {
  const { leaves } = pattern;
  const sum = (of: (leaf: (typeof leaves)[number]) => number): number =>
    leaves.reduce((total, leaf) => total + of(leaf), 0);
  return {
    leaves: leaves.length,
    scores: scoringPlan(pattern).reduce((total, row) => total + row.leaves, 0),
    marks: sum((leaf) => leaf.cuts.length),
    cuts: sum((leaf) => leaf.cuts.length),
    folds: sum((leaf) => foldsOf(leaf, pattern)),
    checks: leaves.filter(isCheckpoint).length,
    tacks: tackList(pattern).glued.length,
    notches: pattern.pocket?.notches.length ?? 0,
    parts: partsOf(pattern.window).reduce((total, part) => total + part.count, 0),
  };
}

/** Rates are seconds each; the result is minutes. */
export function effortOf(counts: Counts, rates: Rates): Effort {
  const minutes = (count: number, seconds: number): number => (count * seconds) / 60;
  const byStage = {
    turn: minutes(counts.leaves, rates.leaf),
    score: minutes(counts.scores, rates.score),
    mark: minutes(counts.marks, rates.mark),
    cut: minutes(counts.cuts, rates.cut),
    fold: minutes(counts.folds, rates.fold),
    check: minutes(counts.checks, rates.check),
    tack: minutes(counts.tacks, rates.tack),
    notch: minutes(counts.notches, rates.notch),
    part: minutes(counts.parts, rates.part),
  };
  return { minutes: Object.values(byStage).reduce((a, b) => a + b, 0), byStage };
}

export type Difficulty = "easy" | "moderate" | "demanding";

/** A word for the work: from cuts a picture leaf and hours; an estimate like they are. */
export function difficultyOf(pattern: Pattern, effort: Effort): Difficulty {
  const leaves = pictureLeaves(pattern);
  const cuts = leaves.reduce((total, leaf) => total + leaf.cuts.length, 0) / Math.max(1, leaves.length);
  const hours = effort.minutes / 60;
  if (pattern.levels.length <= 2 && cuts <= 6 && hours <= 5) return "easy";
  return cuts <= 6.5 && hours <= 9 ? "moderate" : "demanding";
}
