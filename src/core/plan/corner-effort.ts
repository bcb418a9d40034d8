import { isTurned } from "../corner/crease.ts";
import { type CornerPattern, creasesIn } from "../pattern/corner-pattern.ts";
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
