import type { LeafNumber } from "../book/leaf-number.ts";
import type { Pattern, PatternLeaf } from "../pattern/pattern.ts";

/** A run of leaves of the book, both ends included. */
export interface LeafRun {
  readonly first: LeafNumber;
  readonly last: LeafNumber;
}

/** Where one gauge line is needed. */
export interface ScoringRow {
  /** Level number from 1. */
  readonly level: number;
  readonly runs: readonly LeafRun[];
  /** Leaves that are folded at the line; a run holds others that are scored through. */
  readonly needed: readonly LeafNumber[];
  /** Leaves to score in all runs. */
  readonly leaves: number;
}

/** Runs that are at most this many leaves apart are scored through: stopping costs more than it saves (common practice, no source). */
export const SCORE_THROUGH = 4;

/**
 * Which line each range of leaves needs. Single folds need the line of every span's level; stepped folds need the front line
 * on every leaf with more than one level, and each deeper level's line. A line nobody needs on a range is left out.
 */
export function scoringPlan(pattern: Pattern): ScoringRow[] {
  return pattern.levels.map((_, i) => {
    const level = i + 1;
    const needed = pattern.leaves.filter((leaf) => linesOf(leaf, pattern).includes(level)).map((leaf) => leaf.leaf);
    const runs = joinRuns(needed);
    return { level, runs, needed, leaves: runs.reduce((sum, run) => sum + run.last - run.first + 1, 0) };
  });
}

/** Levels whose line is pressed on a leaf, in order. */
export function linesOf(leaf: PatternLeaf, pattern: Pattern): number[] {
  const used = new Set(leaf.spans.map((span) => span.level));
  if (pattern.fit.foldStyle === "stepped" && used.size > 1) used.add(1);
  return [...used].sort((a, b) => a - b);
}

function joinRuns(leaves: readonly LeafNumber[]): LeafRun[] {
  const runs: LeafRun[] = [];
  for (const leaf of leaves) {
    const last = runs.at(-1);
    if (last && leaf - last.last <= SCORE_THROUGH + 1) runs[runs.length - 1] = { first: last.first, last: leaf };
    else runs.push({ first: leaf, last: leaf });
  }
  return runs;
}
