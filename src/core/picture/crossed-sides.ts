import type { Outlines } from "./outlines.ts";

/** The sides of outlines that some upright lines meet, those first that the first line meets. */
export interface CrossedSides {
  /** The sides that line i is the first to meet stand from `starts[i]` to `starts[i + 1]`. */
  readonly starts: Int32Array;
  /** The first line beyond each side. */
  readonly ends: Int32Array;
  /** Twice the number of the shape that a side bounds, and 1 more where it runs to the right. */
  readonly owners: Int32Array;
  /** Four figures for each side: x and y of its left end, and how far from there the right one is. */
  readonly figures: Float64Array;
}

/**
 * Follows each outline once; each step along it passes just the lines, given by their x from the least, that it crosses. A line
 * that touches a corner meets the side that starts there and not the one that ends there, so it is as if it stood just right of it.
 */
export function crossedSides(outlines: Outlines, lines: Float64Array): CrossedSides {
  const { x, starts, shapes, least, most } = outlines;
  const sides: Sides = { firsts: [], ends: [], corners: [], owners: [] };
  for (let piece = 0; piece < shapes.length; piece += 1) {
    let next = firstFrom(lines, least[piece]!);
    if (next === lines.length || lines[next]! >= most[piece]!) continue;
    next = firstFrom(lines, x[starts[piece]!]!);
    for (let corner = starts[piece]! + 1; corner < starts[piece + 1]!; corner += 1) {
      const [to, before] = [x[corner]!, next];
      while (next < lines.length && lines[next]! < to) next += 1;
      while (next > 0 && lines[next - 1]! >= to) next -= 1;
      if (next === before) continue;
      sides.firsts.push(Math.min(next, before));
      sides.ends.push(Math.max(next, before));
      sides.corners.push(corner);
      sides.owners.push(2 * shapes[piece]! + (next > before ? 1 : 0));
    }
  }
  return inOrder(outlines, lines.length, sides);
}

/** Sides as they are found. */
interface Sides {
  readonly firsts: number[];
  readonly ends: number[];
  readonly corners: number[];
  readonly owners: number[];
}

/** Puts sides in the order of the first lines that meet them; those of one line stay in theirs. */
function inOrder({ x, y }: Outlines, lines: number, { firsts, ends, corners, owners }: Sides): CrossedSides {
  const count = firsts.length;
  const starts = new Int32Array(lines + 1);
  for (let i = 0; i < count; i += 1) starts[firsts[i]! + 1]! += 1;
  for (let line = 0; line < lines; line += 1) starts[line + 1]! += starts[line]!;
  const free = starts.slice();
  const ordered = { starts, ends: new Int32Array(count), owners: new Int32Array(count) };
  const figures = new Float64Array(4 * count);
  for (let i = 0; i < count; i += 1) {
    const [place, corner, owner] = [free[firsts[i]!]!, corners[i]!, owners[i]!];
    free[firsts[i]!]! += 1;
    const [left, right] = (owner & 1) === 1 ? [corner - 1, corner] : [corner, corner - 1];
    ordered.ends[place] = ends[i]!;
    ordered.owners[place] = owner;
    figures[4 * place] = x[left]!;
    figures[4 * place + 1] = y[left]!;
    figures[4 * place + 2] = x[right]! - x[left]!;
    figures[4 * place + 3] = y[right]! - y[left]!;
  }
  return { ...ordered, figures };
}

/** The first of some lines that stands at x or right of it. */
export function firstFrom(lines: Float64Array, x: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle]! < x) low = middle + 1;
    else high = middle;
  }
  return low;
}
