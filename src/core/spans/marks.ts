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

/** Spans by number from 0, in order, of which some are gone; a last number beyond them stands for the leaf's end. */
interface Working {
  readonly exact: readonly Span[];
  readonly exactTo: Float64Array;
  readonly from: Float64Array;
  readonly level: Int32Array;
  /** Neighbours of each span that are left. */
  readonly before: Int32Array;
  readonly after: Int32Array;
}

/**
 * From the exact spans of one leaf to spans that a hand can mark and fold.
 * First every boundary is rounded to the step; then, shortest first (nearest the head among equals), each span under the
 * least tab is merged with the neighbour whose depth is nearest, the longer one among equals, else the one toward the head.
 * A span that rounding closes up has no length left, so it is merged and listed like the others.
 */
export function markLeaf(exact: readonly Span[], { step, leastTab, depths }: MarkRules): MarkedLeaf {
  const working = roundBoundaries(joinSpans(exact), step);
  const merged: MergedSpan[] = [];
  const least = Math.max(leastTab - SAME, SAME);
  // Merging makes no span that is shorter, so all of one length are merged on one way down the leaf.
  for (let length = shortest(working); length < least; length = shortest(working)) {
    for (let i = 0; i < working.level.length && !isWhole(working); ) {
      if (lengthOf(working, i) > length + SAME) i = working.after[i]!;
      else i = mergeSpan(working, i, depths, merged);
    }
  }
  return { spans: spansLeft(working), merged };
}

function roundBoundaries(exact: readonly Span[], step: number): Working {
  const count = exact.length;
  const [exactTo, from] = [new Float64Array(count), new Float64Array(count + 1)];
  const [level, before, after] = [new Int32Array(count), new Int32Array(count), new Int32Array(count)];
  const end = exact.at(-1)?.to ?? 0;
  for (let i = 0; i < count; i += 1) {
    const span = exact[i]!;
    exactTo[i] = span.to;
    from[i] = span.from === 0 || span.from === end ? span.from : Math.min(roundTo(span.from, step), end);
    level[i] = span.level;
    before[i] = i - 1;
    after[i] = i + 1;
  }
  from[count] = end;
  return { exact, exactTo, from, level, before, after };
}

/** One span is left, from head to tail. */
function isWhole({ level, after }: Working): boolean {
  return after[0] === level.length;
}

/** The least length; of a span alone it does not matter. */
function shortest(working: Working): number {
  let least = Number.POSITIVE_INFINITY;
  if (isWhole(working)) return least;
  for (let i = 0; i < working.level.length; i = working.after[i]!) least = Math.min(least, lengthOf(working, i));
  return least;
}

function lengthOf({ from, after }: Working, span: number): number {
  return from[after[span]!]! - from[span]!;
}

/** Gives a span the level of a neighbour, joins it with each neighbour of that level and lists it. Gives the span that it is a part of now. */
function mergeSpan(working: Working, span: number, depths: readonly number[], merged: MergedSpan[]): number {
  const { exact, exactTo, level, before, after } = working;
  const into = level[nearestNeighbour(working, span, depths)]!;
  merged.push({ from: tidy(exact[span]!.from, 3), to: tidy(exactTo[span]!, 3), level: level[span]!, into });
  level[span] = into;
  if (level[after[span]!] === into) takeOut(working, after[span]!);
  if (level[before[span]!] !== into) return span;
  takeOut(working, span);
  return before[span]!;
}

function nearestNeighbour(working: Working, span: number, depths: readonly number[]): number {
  const { level } = working;
  const [before, after] = [working.before[span]!, working.after[span]!];
  if (before < 0) return after;
  if (after === level.length) return before;
  const change = (other: number): number => Math.abs(depths[level[other]! - 1]! - depths[level[span]! - 1]!);
  const nearer = change(before) - change(after);
  if (Math.abs(nearer) > SAME) return nearer < 0 ? before : after;
  return lengthOf(working, after) > lengthOf(working, before) + SAME ? after : before;
}

/** Joins a span with the one before it. */
function takeOut({ exactTo, level, before, after }: Working, gone: number): void {
  const [first, next] = [before[gone]!, after[gone]!];
  exactTo[first] = exactTo[gone]!;
  after[first] = next;
  if (next < level.length) before[next] = first;
}

function spansLeft({ from, level, after }: Working): Span[] {
  const spans: Span[] = [];
  for (let i = 0; i < level.length; i = after[i]!)
    spans.push({ from: from[i]!, to: from[after[i]!]!, level: level[i]! });
  return spans;
}
