import { roundTo, tidy } from "../units/length.ts";
import type { LeafSpans } from "./leaf-spans.ts";
import type { MergedSpan, Span } from "./span.ts";

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

/** Spans by number from 0, in order, of which some are gone; the number `count` stands for the leaf's end. */
interface Working {
  readonly exact: LeafSpans;
  readonly count: number;
  readonly exactTo: Float64Array;
  readonly from: Float64Array;
  readonly level: Int32Array;
  /** Neighbours of each span that are left. */
  readonly before: Int32Array;
  readonly after: Int32Array;
}

/** Room to work in. */
type Room = Omit<Working, "exact" | "count">;

/**
 * Marks leaf after leaf by the same rules: from the exact spans of one leaf to spans that a hand can mark and fold.
 * First every boundary is rounded to the step; then, shortest first (nearest the head among equals), each span under the
 * least tab is merged with the neighbour whose depth is nearest, the longer one among equals, else the one toward the head.
 * A span that rounding closes up has no length left, so it is merged and listed like the others.
 */
export function markerOf({ step, leastTab, depths }: MarkRules): (exact: LeafSpans) => MarkedLeaf {
  const least = Math.max(leastTab - SAME, SAME);
  let room = workroom(64);
  return (exact) => {
    if (exact.count > room.level.length) room = workroom(2 * exact.count);
    const working = roundBoundaries(exact, step, room);
    const merged: MergedSpan[] = [];
    // Merging makes no span that is shorter, so all of one length are merged on one way down the leaf.
    for (let length = shortest(working); length < least; length = shortest(working)) {
      for (let i = 0; i < working.count && !isWhole(working); ) {
        if (lengthOf(working, i) > length + SAME) i = working.after[i]!;
        else i = mergeSpan(working, i, depths, merged);
      }
    }
    return { spans: spansLeft(working), merged };
  };
}

function workroom(spans: number): Room {
  return {
    exactTo: new Float64Array(spans),
    from: new Float64Array(spans + 1),
    level: new Int32Array(spans),
    before: new Int32Array(spans),
    after: new Int32Array(spans),
  };
}

function roundBoundaries(exact: LeafSpans, step: number, room: Room): Working {
  const { count } = exact;
  const { exactTo, from, level, before, after } = room;
  const end = exact.startOf(count);
  for (let i = 0; i < count; i += 1) {
    exactTo[i] = exact.ends[i]!;
    from[i] = i === 0 ? 0 : Math.min(roundTo(exact.ends[i - 1]!, step), end);
    level[i] = exact.levels[i]!;
    before[i] = i - 1;
    after[i] = i + 1;
  }
  from[count] = end;
  return { exact, count, ...room };
}

/** One span is left, from head to tail. */
function isWhole({ count, after }: Working): boolean {
  return after[0] === count;
}

/** The least length; of a span alone it does not matter. */
function shortest(working: Working): number {
  let least = Number.POSITIVE_INFINITY;
  if (isWhole(working)) return least;
  for (let i = 0; i < working.count; i = working.after[i]!) least = Math.min(least, lengthOf(working, i));
  return least;
}

function lengthOf({ from, after }: Working, span: number): number {
  return from[after[span]!]! - from[span]!;
}

/** Gives a span the level of a neighbour, joins it with each neighbour of that level and lists it. Gives the span that it is a part of now. */
function mergeSpan(working: Working, span: number, depths: readonly number[], merged: MergedSpan[]): number {
  const { exact, count, exactTo, level, before, after } = working;
  const into = level[nearestNeighbour(working, span, depths)]!;
  merged.push({ from: tidy(exact.startOf(span), 3), to: tidy(exactTo[span]!, 3), level: level[span]!, into });
  level[span] = into;
  if (after[span]! < count && level[after[span]!] === into) takeOut(working, after[span]!);
  if (before[span]! < 0 || level[before[span]!] !== into) return span;
  takeOut(working, span);
  return before[span]!;
}

function nearestNeighbour(working: Working, span: number, depths: readonly number[]): number {
  const { count, level } = working;
  const before = working.before[span]!;
  const after = working.after[span]!;
  if (before < 0) return after;
  if (after === count) return before;
  const change = (other: number): number => Math.abs(depths[level[other]! - 1]! - depths[level[span]! - 1]!);
  const nearer = change(before) - change(after);
  if (Math.abs(nearer) > SAME) return nearer < 0 ? before : after;
  return lengthOf(working, after) > lengthOf(working, before) + SAME ? after : before;
}

/** Joins a span with the one before it. */
function takeOut({ count, exactTo, before, after }: Working, gone: number): void {
  const first = before[gone]!;
  const next = after[gone]!;
  exactTo[first] = exactTo[gone]!;
  after[first] = next;
  if (next < count) before[next] = first;
}

function spansLeft({ count, from, level, after }: Working): Span[] {
  const spans: Span[] = [];
  for (let i = 0; i < count; i = after[i]!) spans.push({ from: from[i]!, to: from[after[i]!]!, level: level[i]! });
  return spans;
}
