import type { Span } from "./span.ts";

/** A flap, or a part of one, that needs a dot of glue: mm from the head. */
export interface Tack {
  readonly from: number;
  readonly to: number;
}

/** Lengths (mm) that differ by less are the same: exactly half a flap is not more than half. */
const SAME = 1e-6;

/**
 * A flap of this leaf stays tucked only where the next leaf's body covers it. Flap depth d lies at radii W − 2d … W − d;
 * a next leaf at depth e > d leaves e − d of it free. More than half free, or no next leaf at all: tack.
 * `next` is undefined after the last leaf of the book; an unfolded next leaf covers everything and is an empty list.
 */
export function tacksOf(spans: readonly Span[], next: readonly Span[] | undefined, depths: readonly number[]): Tack[] {
  if (next === undefined) return spans.map(({ from, to }) => ({ from, to }));
  return spans.flatMap((span) => {
    const depth = depths[span.level - 1]!;
    const loose = next
      .filter(
        (other) => depths[other.level - 1]! - depth > depth / 2 + SAME && other.from < span.to && other.to > span.from,
      )
      .map((other) => ({ from: Math.max(span.from, other.from), to: Math.min(span.to, other.to) }));
    return joinTacks(loose);
  });
}

function joinTacks(tacks: readonly Tack[]): Tack[] {
  const joined: Tack[] = [];
  for (const tack of tacks) {
    const last = joined.at(-1);
    if (last && last.to === tack.from) joined[joined.length - 1] = { from: last.from, to: tack.to };
    else joined.push(tack);
  }
  return joined;
}
