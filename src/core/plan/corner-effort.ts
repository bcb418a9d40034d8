import { isTurned } from "../corner/crease.ts";
import { creasesOf } from "../corner/leaf-fold.ts";
import type { Rates } from "../kit/kit.ts";
import { type CornerLeaf, type CornerPattern, creasesIn } from "../pattern/corner-pattern.ts";
import { isCheckpoint } from "./batches.ts";
import type { Counts } from "./effort.ts";

/**
 * Counts of a pattern that is folded by corners: a mark where each crease begins, another one where a steeper crease ends, and a
 * fold for each crease and each leaf that is folded straight. Nothing is pressed beforehand, cut or glued.
 */
export function cornerCounts(pattern: CornerPattern): Counts {
  const creases = creasesIn(pattern);
  const straight = pattern.leaves.filter(({ fold }) => fold.kind === "straight").length;
  return {
    leaves: pattern.leaves.length,
    scores: 0,
    marks: creases.length + creases.filter(isTurned).length,
    cuts: 0,
    folds: creases.length + straight,
    checks: pattern.leaves.filter(isCheckpoint).length,
    tacks: 0,
    notches: 0,
    parts: 0,
  };
}

/** Seconds at the bench for one leaf: turning, marks, folds, check. */
export function cornerLeafSeconds(leaf: CornerLeaf, rates: Rates): number {
  const creases = creasesOf(leaf.fold);
  const marks = creases.length + creases.filter(isTurned).length;
  const folds = leaf.fold.kind === "straight" ? 1 : creases.length;
  return rates.leaf + rates.mark * marks + rates.fold * folds + (isCheckpoint(leaf) ? rates.check : 0);
}
