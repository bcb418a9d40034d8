import { computeCorner, cornerHoldWidth } from "../pattern/compute-corner.ts";
import type { CornerPattern } from "../pattern/corner-pattern.ts";
import { cornerCounts, cornerLeafSeconds } from "../plan/corner-effort.ts";
import { effortOf } from "../plan/effort.ts";
import { cornerWork } from "../steps/corner-work.ts";
import { benchWay } from "./bench-plan.ts";
import { besideLeaves, wholeStep } from "./beside-leaves.ts";

/** Lays kits out whose leaves are folded by corners. */
export const CORNER_WAY = benchWay<CornerPattern>({
  make: computeCorner,
  work: cornerWork,
  beside: (kit, pattern, { work }) => {
    const effort = effortOf(cornerCounts(pattern), kit.rates);
    return besideLeaves(work, pattern.leaves.at(-1)!.leaf, (step) => [wholeStep(step, effort)]);
  },
  estimates: (pattern, rates) =>
    new Map(cornerLeafSeconds(pattern, rates).map(({ leaf, seconds }) => [leaf.leaf, 1000 * seconds])),
  holdWidth: (fan, { leaves }) => cornerHoldWidth(fan, leaves),
  folds: ({ leaves }) => leaves.map(({ leaf, fold }) => [leaf, fold]),
});
