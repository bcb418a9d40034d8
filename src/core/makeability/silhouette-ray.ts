import type { ProfileStretch } from "./profile.ts";

/** A leaf seen from above: x grows from its root by its lean for each mm of radius. */
export interface StandingLeaf {
  readonly root: number;
  readonly lean: number;
  readonly profile: readonly ProfileStretch[];
}

/** Leaves on their way outward to one side: x counts outward. Between neighbours at one radius lies a line, `root + lean · radius`. */
interface Side {
  readonly leaves: readonly StandingLeaf[];
  /** The line outward of each leaf. */
  readonly lines: readonly Pick<StandingLeaf, "root" | "lean">[];
}

/** The leaves of an opened book for rays to either side. */
export interface Fanned {
  readonly left: Side;
  readonly right: Side;
}

/** What a ray meets of the shown stretches, mm from the head: a leaf's edge in its own cell, or its side at a radius. */
export interface MetStretch {
  readonly from: number;
  readonly to: number;
  readonly isEdge: boolean;
  readonly radius: number;
}

/** Stands leaves up, given from the viewer's left. There are at least two. */
export function fanOut(leaves: readonly StandingLeaf[]): Fanned {
  const mirrored = leaves.toReversed().map((leaf) => ({ ...leaf, root: -leaf.root, lean: -leaf.lean }));
  return { left: sideOf(mirrored), right: sideOf(leaves) };
}

function sideOf(leaves: readonly StandingLeaf[]): Side {
  const lines = leaves.map((leaf, i) => {
    const next = leaves[i + 1];
    // Half a pitch beyond the outermost leaf.
    const before = leaves[i - 1]!;
    const other = next ?? { root: 2 * leaf.root - before.root, lean: 2 * leaf.lean - before.lean };
    return { root: (leaf.root + other.root) / 2, lean: (leaf.lean + other.lean) / 2 };
  });
  return { leaves, lines };
}

/**
 * What the viewer's ray at x meets of shown stretches. `front` is the radius of the proudest edges. As a leaf is a line from the
 * gutter outward, the ray passes from its cell on the front to leaves further out, each at a smaller radius: it meets a leaf
 * at the heights at which that one reaches as far out as the line outward of it. Where it reaches no further than the line
 * inward of it, the ray is in its cell and meets its edge, otherwise its side. Leaves are lines without thickness.
 */
export function meetLeaves({ left, right }: Fanned, x: number, front: number): MetStretch[] {
  const { leaves, lines } = x < 0 ? left : right;
  const out = Math.abs(x);
  const met: MetStretch[] = [];
  const { profile } = leaves[0]!;
  let open: (readonly [number, number])[] = [[profile[0]!.from, profile.at(-1)!.to]];
  for (let i = firstLine(lines, out, front); i < leaves.length && open.length > 0; i += 1) {
    const outer = radiusAt(lines[i]!, out);
    const inner = i === 0 ? Number.POSITIVE_INFINITY : radiusAt(lines[i - 1]!, out);
    for (const stretch of leaves[i]!.profile) {
      const reached = reachedPart(stretch, outer);
      if (!reached) continue;
      const left: (readonly [number, number])[] = [];
      for (const piece of open) {
        const from = piece[0];
        const to = piece[1];
        const begin = Math.max(from, reached[0]);
        const end = Math.min(to, reached[1]);
        if (begin >= end) {
          left.push(piece);
          continue;
        }
        if (from < begin) left.push([from, begin]);
        if (end < to) left.push([end, to]);
        if (!stretch.isShown) continue;
        const isEdge = stretch.radiusFrom <= inner;
        const radius = isEdge ? stretch.radiusFrom : Math.min(stretch.radiusFrom, radiusAt(leaves[i]!, out));
        met.push({ from: begin, to: end, isEdge, radius });
      }
      open = left;
    }
  }
  return met;
}

/** The first leaf whose outward line the ray does not pass on the front. */
function firstLine(lines: Side["lines"], out: number, front: number): number {
  let low = 0;
  let high = lines.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const { root, lean } = lines[middle]!;
    if (root + lean * front < out) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The radius from which on a line is at least so far out; 0 where all of it is, Infinity where it leans the other way. */
function radiusAt({ root, lean }: Pick<StandingLeaf, "root" | "lean">, out: number): number {
  if (root >= out) return 0;
  return lean <= 0 ? Number.POSITIVE_INFINITY : (out - root) / lean;
}

/** The heights at which a stretch reaches a radius. */
function reachedPart(
  { from, to, radiusFrom, radiusTo }: ProfileStretch,
  radius: number,
): readonly [number, number] | undefined {
  if (radiusFrom < radius && radiusTo < radius) return undefined;
  if (radiusFrom >= radius && radiusTo >= radius) return [from, to];
  const at = from + ((radius - radiusFrom) / (radiusTo - radiusFrom)) * (to - from);
  return radiusFrom >= radius ? [from, at] : [at, to];
}
