import { type Pattern, type PatternLeaf, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { paperTone } from "../front/tone.ts";

/** A mark where two neighbouring spans of a leaf meet; levels from 1. */
export interface Boundary {
  readonly at: number;
  readonly upper: number;
  readonly lower: number;
}

/** The picture leaf with most cuts, the first among equals. */
export function exampleLeaf(pattern: Pattern): PatternLeaf {
  return pictureLeaves(pattern).reduce((best, leaf) => (leaf.cuts.length > best.cuts.length ? leaf : best));
}

/**
 * The boundary of a leaf whose two depths differ most, the one nearest the head among equals; among those that touch the
 * front level or do not, where `front` asks for it and there are such. Undefined on a leaf without cuts.
 */
export function exampleBoundary(
  pattern: Pattern,
  leaf: PatternLeaf,
  front: "with" | "without" | "either",
): Boundary | undefined {
  const all = leaf.spans.slice(1).map((span, i) => ({ at: span.from, upper: leaf.spans[i]!.level, lower: span.level }));
  const touches = (one: Boundary): boolean => one.upper === 1 || one.lower === 1;
  const wanted = front === "either" ? all : all.filter((one) => touches(one) === (front === "with"));
  const difference = (one: Boundary): number => Math.abs(depthOf(pattern, one.upper) - depthOf(pattern, one.lower));
  return (wanted.length > 0 ? wanted : all).reduce<Boundary | undefined>(
    (best, one) => (best && difference(best) >= difference(one) ? best : one),
    undefined,
  );
}

/** Depth of a level, mm from the fore-edge. */
export function depthOf(pattern: Pattern, level: number): number {
  return pattern.levels[level - 1]!.depth;
}

/** The paper's tint at a level, as in the picture of the finished book. */
export function levelTint(pattern: Pattern, level: number): string {
  const front = depthOf(pattern, 1);
  const deepest = Math.max(...pattern.levels.map((one) => one.depth));
  return paperTone((0.5 * (depthOf(pattern, level) - front)) / Math.max(1, deepest - front), 1);
}
