import { leafOfWork } from "../bench/bench-item.ts";
import { isTicked, type Progress } from "../bench/progress.ts";
import { exactly } from "../bench/recovery.ts";
import type { LeafNumber } from "../book/leaf-number.ts";
import type { AnyPattern } from "../pattern/corner-pattern.ts";
import { depthsOf, type Pattern, type PatternLeaf } from "../pattern/pattern.ts";

/** What differs between the pattern that a piece was begun with and the kit's pattern now. */
export interface PatternChange {
  /** Leaves on which something else is done, or on which something is done in one of the two alone; in book order. */
  readonly leaves: readonly LeafNumber[];
  /** Those that are ticked. */
  readonly done: readonly LeafNumber[];
  /** A level is folded at another depth: the gauge is another, and lines are pressed anew. */
  readonly depths: boolean;
}

export function patternChange(before: AnyPattern, after: AnyPattern, progress: Progress): PatternChange {
  const old = workOf(before);
  const now = workOf(after);
  const leaves = [...new Set([...old.keys(), ...now.keys()])]
    .filter((leaf) => old.get(leaf) !== now.get(leaf))
    .toSorted((a, b) => a - b);
  const depths = String(gaugedIn(before)) !== String(gaugedIn(after));
  return { leaves, done: leaves.filter((leaf) => isTicked(progress, leaf)), depths };
}

/** Progress that goes on with the new pattern: leaves with other work lose their ticks, notches and tacks, other depths all steps. */
export function changeOver(progress: Progress, { leaves, depths }: PatternChange, revision: string): Progress {
  const changed = new Set<LeafNumber | undefined>(leaves);
  const stays = (name: string): boolean => !changed.has(leafOfWork(name)) && !(depths && /^(step|score) /.test(name));
  return {
    ...progress,
    revision,
    ticks: progress.ticks.filter(({ leaf }) => !changed.has(leaf)),
    passed: progress.passed.filter(stays),
    lost: progress.lost.map((one) => ({
      leaf: one.leaf,
      cleared: one.cleared.filter(({ leaf }) => !changed.has(leaf)),
    })),
  };
}

/** Depths that a gauge or a card is made for, mm, and whether leaves are cut at all. */
function gaugedIn({ corner, levels }: AnyPattern): readonly (number | boolean | undefined)[] {
  return corner ? [false, corner.emptyDepth] : depthsOf(levels);
}

/** Everything that is done with each leaf, as text. */
function workOf(pattern: AnyPattern): Map<LeafNumber, string> {
  const works = pattern.corner ? pattern.leaves.map(({ leaf, fold }) => [leaf, fold] as const) : cutWork(pattern);
  return new Map(works.map(([leaf, work]) => [leaf, exactly(work)]));
}

function cutWork({ leaves, levels, pocket }: Pattern): (readonly [LeafNumber, unknown])[] {
  const notches = new Map(pocket?.notches.map(({ leaf, from, to, depth }) => [leaf, [from, to, depth]]));
  const folds = ({ spans }: PatternLeaf): readonly number[][] =>
    spans.map(({ from, to, level }) => [from, to, levels[level - 1]!.depth]);
  return leaves.map((one) => [one.leaf, [folds(one), one.cuts, notches.get(one.leaf)]]);
}
