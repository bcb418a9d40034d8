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

/** Seconds at the bench for each folded leaf in book order: turning, marks, folds, check; the counts' own work, leaf by leaf. */
export function cornerLeafSeconds(
  pattern: CornerPattern,
  rates: Rates,
): { readonly leaf: CornerLeaf; readonly seconds: number }[] {
  return pattern.leaves.map((leaf) => {
    const creases = creasesOf(leaf.fold);
    const marks = creases.length + creases.filter(isTurned).length;
    const folds = leaf.fold.kind === "straight" ? 1 : creases.length;
    const check = isCheckpoint(leaf) ? rates.check : 0;
    return { leaf, seconds: rates.leaf + rates.mark * marks + rates.fold * folds + check };
  });
}
