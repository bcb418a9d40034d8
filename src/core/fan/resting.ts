import type { Span } from "../spans/span.ts";

export interface Stack {
  readonly leafWidth: number;
  readonly blockThickness: number;
  /** Thickness of one leaf. */
  readonly caliper: number;
  /** Leaves that are not folded at all. */
  readonly unfolded: number;
  /** How many leaf thicknesses a springy folded flap counts: κ. Starts at 2, an estimate. */
  readonly flapBulk: number;
  readonly depths: readonly number[];
}

/**
 * The opening (radians) that the folded flaps force on the book: max over radius r and height u of (S(r,u) − T)/r,
 * S the stack there: t for each body that reaches r, κ·t for each flap lying at r. 0 where flaps add nothing.
 * S falls as r grows except where a flap begins, so only the flaps' inner ends W − 2d need looking at.
 */
export function restingOpening(stack: Stack, leaves: readonly (readonly Span[])[]): number {
  const counts = stack.depths.map(() => 0);
  const events = leaves.flat().flatMap((span) => [
    { at: span.from, level: span.level - 1, change: 1 },
    { at: span.to, level: span.level - 1, change: -1 },
  ]);
  events.sort((a, b) => a.at - b.at);
  let greatest = 0;
  events.forEach((event, index) => {
    counts[event.level]! += event.change;
    if (events[index + 1]?.at !== event.at) greatest = Math.max(greatest, openingForced(stack, counts));
  });
  return greatest;
}

function openingForced(stack: Stack, counts: readonly number[]): number {
  let greatest = 0;
  for (const depth of stack.depths) {
    const radius = stack.leafWidth - 2 * depth;
    if (radius > 0) greatest = Math.max(greatest, (stackAt(stack, counts, radius) - stack.blockThickness) / radius);
  }
  return greatest;
}

function stackAt(stack: Stack, counts: readonly number[], radius: number): number {
  let leafThicknesses = stack.unfolded;
  stack.depths.forEach((depth, level) => {
    if (radius > stack.leafWidth - depth) return;
    leafThicknesses += counts[level]!;
    if (radius >= stack.leafWidth - 2 * depth) leafThicknesses += stack.flapBulk * counts[level]!;
  });
  return leafThicknesses * stack.caliper;
}

/**
 * κ from the maker's own first batch: the thickness of `m` folded leaves pressed together at the flaps
 * is m·t·(1 + κ).
 */
export function flapBulkFromBatch(thickness: number, m: number, oneLeaf: number): number {
  return thickness / (m * oneLeaf) - 1;
}
