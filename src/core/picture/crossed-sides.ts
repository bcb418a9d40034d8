import type { Outlines, Piece } from "./outlines.ts";

/** The sides of outlines that some upright lines meet, by number. */
export interface CrossedSides {
  /** For each line the last of the sides that it is the first to meet; −1 where there is none. */
  readonly begun: Int32Array;
  /** For each side the one before it that the same line is the first to meet; −1 where there is none. */
  readonly earlier: Int32Array;
  /** The first line that each side meets, and the first beyond it. Along an outline one side goes on where the one before it ends. */
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  /** Twice the number of the shape that a side bounds, and 1 more where it runs to the right. */
  readonly owners: Int32Array;
  /** Four figures for each side: x and y of its left end, and how far from there the right one is. */
  readonly figures: Float64Array;
}

/**
 * Follows each piece of an outline once; each step along it passes just the lines, given by their x from the least, that it
 * crosses. A line that touches a corner meets the side that starts there and not the one that ends there, so it is as if it
 * stood just right of it.
 */
export function crossedSides({ x, y, pieces }: Outlines, lines: Float64Array): CrossedSides {
  const reached = pieces.filter((piece) => isReached(piece, lines));
  // A side is met for the first time once.
  const room = reached.reduce((sum, { first, last }) => sum + last - first, 0);
  const sides = {
    begun: new Int32Array(lines.length).fill(-1),
    earlier: new Int32Array(room),
    starts: new Int32Array(room),
    ends: new Int32Array(room),
    owners: new Int32Array(room),
    figures: new Float64Array(4 * room),
  };
  const { begun, earlier, starts, ends, owners, figures } = sides;
  let count = 0;
  for (const { first, last, owner } of reached) {
    let next = firstFrom(lines, x[first]!);
    // Most sides stay between two lines; which they are is not known yet.
    let before = 0;
    let beyond = 0;
    for (let corner = first + 1; corner <= last; corner += 1) {
      const to = x[corner]!;
      if (to > before && to <= beyond) continue;
      const from = next;
      while (next < lines.length && lines[next]! < to) next += 1;
      while (next > 0 && lines[next - 1]! >= to) next -= 1;
      before = next > 0 ? lines[next - 1]! : Number.NEGATIVE_INFINITY;
      beyond = next < lines.length ? lines[next]! : Number.POSITIVE_INFINITY;
      if (next === from) continue;
      const isRight = next > from;
      const left = isRight ? corner - 1 : corner;
      const right = isRight ? corner : corner - 1;
      const start = isRight ? from : next;
      earlier[count] = begun[start]!;
      begun[start] = count;
      starts[count] = start;
      ends[count] = isRight ? next : from;
      owners[count] = 2 * owner + (isRight ? 1 : 0);
      figures[4 * count] = x[left]!;
      figures[4 * count + 1] = y[left]!;
      figures[4 * count + 2] = x[right]! - x[left]!;
      figures[4 * count + 3] = y[right]! - y[left]!;
      count += 1;
    }
  }
  return sides;
}

function isReached({ least, most }: Piece, lines: Float64Array): boolean {
  const next = firstFrom(lines, least);
  return next < lines.length && lines[next]! < most;
}

/** The first of some lines that stands at x or right of it. */
export function firstFrom(lines: Float64Array, x: number): number {
  let low = 0;
  let high = lines.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle]! < x) low = middle + 1;
    else high = middle;
  }
  return low;
}
