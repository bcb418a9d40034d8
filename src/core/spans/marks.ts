import { roundTo, tidy } from "../units/length.ts";
import { joinSpans, type MergedSpan, type Span } from "./span.ts";

export interface MarkRules {
  /** Marks are multiples of this, mm. */
  readonly step: number;
  /** Spans shorter than this are merged with a neighbour, mm. */
  readonly leastTab: number;
  /** Depth of each level, mm, front to back. */
  readonly depths: readonly number[];
}

export interface MarkedLeaf {
  readonly spans: readonly Span[];
  readonly merged: readonly MergedSpan[];
}

/** Lengths (mm) that differ by less are the same: binary dust. */
const SAME = 1e-6;

/** A span with its rounded marks beside the exact ones. */
interface Working extends Span {
  readonly exactFrom: number;
  readonly exactTo: number;
}

/**
 * From the exact spans of one leaf to spans that a hand can mark and fold.
 * First every boundary is rounded to the step; then, shortest first (nearest the head among equals), each span under the
 * least tab is merged with the neighbour whose depth is nearest, the longer one among equals, else the one toward the head.
 * A span that rounding closes up has no length left, so it is merged and listed like the others.
 */
export function markLeaf(exact: readonly Span[], rules: MarkRules): MarkedLeaf {
  const working = roundBoundaries(joinSpans(exact), rules.step);
  const merged: MergedSpan[] = [];
  for (;;) {
    const index = shortest(working, rules.leastTab);
    if (index < 0) break;
    const span = working[index]!;
    const into = nearestNeighbour(working, index, rules.depths);
    merged.push({ from: tidy(span.exactFrom, 3), to: tidy(span.exactTo, 3), level: span.level, into: into.level });
    merge(working, index, into.level);
  }
  const spans = working.map(({ from, to, level }) => ({ from, to, level }));
  return { spans, merged };
}

function roundBoundaries(spans: readonly Span[], step: number): Working[] {
  const end = spans.at(-1)?.to ?? 0;
  const mark = (at: number): number => (at === 0 || at === end ? at : Math.min(roundTo(at, step), end));
  return spans.map(({ from, to, level }) => ({ from: mark(from), to: mark(to), level, exactFrom: from, exactTo: to }));
}

function shortest(spans: readonly Working[], leastTab: number): number {
  if (spans.length < 2) return -1;
  let found = -1;
  let least = Math.max(leastTab - SAME, SAME);
  for (let i = 0; i < spans.length; i += 1) {
    const length = spans[i]!.to - spans[i]!.from;
    if (length >= least) continue;
    found = i;
    least = length - SAME;
  }
  return found;
}

function nearestNeighbour(spans: readonly Working[], index: number, depths: readonly number[]): Working {
  const span = spans[index]!;
  const before = spans[index - 1];
  const after = spans[index + 1];
  if (!before || !after) return (before ?? after)!;
  const change = (other: Working): number => Math.abs(depths[other.level - 1]! - depths[span.level - 1]!);
  const nearer = change(before) - change(after);
  if (Math.abs(nearer) > SAME) return nearer < 0 ? before : after;
  return after.to - after.from > before.to - before.from + SAME ? after : before;
}

/** Gives a span the level of a neighbour, and joins it with each neighbour of that level. No two neighbours have one level before, nor after. */
function merge(spans: Working[], index: number, level: number): void {
  spans[index] = { ...spans[index]!, level };
  joinWithNext(spans, index);
  joinWithNext(spans, index - 1);
}

function joinWithNext(spans: Working[], index: number): void {
  const [span, next] = [spans[index], spans[index + 1]];
  if (span && next && span.level === next.level)
    spans.splice(index, 2, { ...span, to: next.to, exactTo: next.exactTo });
}
