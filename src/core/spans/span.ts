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

/** Joins neighbours of the same level and drops spans without length. Spans are in order and gapless. */
export function joinSpans(spans: readonly Span[]): Span[] {
  const joined: Span[] = [];
  for (const span of spans) {
    const last = joined.at(-1);
    if (span.to <= span.from) continue;
    if (last && last.level === span.level) joined[joined.length - 1] = { ...last, to: span.to };
    else joined.push(span);
  }
  return joined;
}

/** Cut at each boundary between different levels, to the deeper of the two; none at head or tail. `depths` by level, 0-based. */
export function cutsBetween(spans: readonly Span[], depths: readonly number[]): Cut[] {
  return spans.slice(1).map((span, i) => ({
    at: span.from,
    depth: Math.max(depths[spans[i]!.level - 1]!, depths[span.level - 1]!),
  }));
}
