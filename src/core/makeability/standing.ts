import { leafNumber } from "../book/leaf-number.ts";
import { leafTip } from "../fan/fan.ts";
import { fanOf } from "../pattern/fan-of.ts";
import { depthsOf, leavesFromLeft, type Pattern } from "../pattern/pattern.ts";
import type { Span } from "../spans/span.ts";
import { seenAt, type Viewer } from "./viewer.ts";

/** The tips of all leaves as if all were folded at one level, where the viewer sees them, from left to right. */
interface TipRow {
  readonly tips: readonly number[];
  /** The leaves in which tips still go to the right: beyond, the surface turns away from a near viewer. */
  readonly first: number;
  readonly last: number;
}

/** The leaves that stand in the opened book, from the viewer's left to right. */
export interface Standing {
  /** Of each leaf what it is folded to; level 0 is an unfolded leaf. */
  readonly spans: readonly (readonly Span[])[];
  /** Whether a leaf carries the picture. */
  readonly picture: readonly boolean[];
  /** By level from 0. */
  readonly rows: readonly TipRow[];
  /** The proudest level that any leaf stands at. */
  readonly proudest: 0 | 1;
}

/** Stands the leaves of a pattern up; lost leaves are gone. */
export function standLeaves(pattern: Pattern, viewer: Viewer): Standing {
  const { book, levels } = pattern;
  const fan = fanOf(pattern);
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf, leaf]));
  const seen = leavesFromLeft(pattern);
  const front = book.leafWidth - levels[0]!.depth;
  const leaves = seen.map((j) => folded.get(leafNumber(j + 1)));
  return {
    spans: leaves.map((leaf) => leaf?.spans ?? [{ from: 0, to: book.leafHeight, level: 0 }]),
    picture: leaves.map((leaf) => leaf !== undefined && leaf.patternPage !== null),
    rows: [0, ...depthsOf(levels)].map((depth) =>
      rowOf(seen.map((j) => seenAt(viewer, front, leafTip(fan, j, depth)))),
    ),
    proudest: leaves.includes(undefined) ? 0 : 1,
  };
}

/**
 * The leaf (from 0) in whose cell of a level a ray passes: cells end midway between neighbouring tips, the outermost half a
 * pitch beyond. −1 and the count of leaves are to the left and to the right of all cells.
 */
export function cellAt({ tips, first, last }: TipRow, ray: number): number {
  const firstHalf = (tips[first + 1]! - tips[first]!) / 2;
  const lastHalf = (tips[last]! - tips[last - 1]!) / 2;
  if (ray < tips[first]! - firstHalf) return -1;
  if (ray > tips[last]! + lastHalf) return tips.length;
  let low = first;
  let high = last;
  while (high > low) {
    const middle = (low + high) >> 1;
    if (ray <= (tips[middle]! + tips[middle + 1]!) / 2) high = middle;
    else low = middle + 1;
  }
  return low;
}

function rowOf(tips: readonly number[]): TipRow {
  const middle = (tips.length - 1) >> 1;
  let first = middle;
  let last = middle;
  while (first > 0 && tips[first - 1]! < tips[first]!) first -= 1;
  while (last + 1 < tips.length && tips[last + 1]! > tips[last]!) last += 1;
  return { tips, first, last };
}
