/** A stretch of one leaf at one level. `from` and `to` in mm from the head; levels count from 1, the proudest. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly level: number;
}

/** A slit from the fore-edge inward, `at` mm from the head, `depth` mm from the fore-edge. */
export interface Cut {
  readonly at: number;
  readonly depth: number;
}

/** A span too short to fold, and the level of the neighbour that it was merged with. `from` and `to` as the picture draws them, before rounding. */
export interface MergedSpan {
  readonly from: number;
  readonly to: number;
  readonly level: number;
  readonly into: number;
}

/** Cut at each boundary between different levels, to the deeper of the two; none at head or tail. `depths` by level, 0-based. */
export function cutsBetween(spans: readonly Span[], depths: readonly number[]): Cut[] {
  const cuts: Cut[] = [];
  for (let i = 1; i < spans.length; i += 1) {
    const { from, level } = spans[i]!;
    cuts.push({ at: from, depth: Math.max(depths[spans[i - 1]!.level - 1]!, depths[level - 1]!) });
  }
  return cuts;
}
