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
  const changes = new Map<number, number[]>();
  const change = (at: number, level: number, by: number): void => {
    const own = changes.get(at) ?? stack.depths.map(() => 0);
    own[level - 1]! += by;
    changes.set(at, own);
  };
  for (const spans of leaves)
    for (const { from, to, level } of spans) {
      change(from, level, 1);
      change(to, level, -1);
    }
  const counts = stack.depths.map(() => 0);
  let greatest = 0;
  for (const [, own] of [...changes].sort(([a], [b]) => a - b)) {
    for (const [k, by] of own.entries()) counts[k]! += by;
    greatest = Math.max(greatest, openingForced(stack, counts));
  }
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
 * is m·t·(1 + κ); where only `flaps` of them have a flap there, m·t + κ·flaps·t.
 */
export function flapBulkFromBatch(thickness: number, m: number, oneLeaf: number, flaps = m): number {
  return (thickness / (m * oneLeaf) - 1) * (m / flaps);
}
