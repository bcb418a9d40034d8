import type { Outline } from "./outlines.ts";

/** The sides of outlines that some upright lines meet, by number. */
export interface CrossedSides {
  /** For each line the sides that it is the first to meet. */
  readonly begun: readonly (readonly number[])[];
  /** The first line beyond each side. */
  readonly ends: readonly number[];
  /** Twice the number of the shape that a side bounds, and 1 more where it runs to the right. */
  readonly owners: readonly number[];
  /** Four figures for each side: x and y of its left end, and how far from there the right one is. */
  readonly figures: readonly number[];
}

/**
 * Follows each outline once; each step along it passes just the lines, given by their x from the least, that it crosses. A line
 * that touches a corner meets the side that starts there and not the one that ends there, so it is as if it stood just right of it.
 */
export function crossedSides(outlines: readonly Outline[], lines: Float64Array): CrossedSides {
  const begun = Array.from(lines, (): number[] => []);
  const [ends, owners, figures]: [number[], number[], number[]] = [[], [], []];
  for (const { x, y, least, most, shape } of outlines) {
    let next = firstFrom(lines, least);
    if (next === lines.length || lines[next]! >= most) continue;
    next = firstFrom(lines, x[0]!);
    for (let corner = 1; corner < x.length; corner += 1) {
      const [to, before] = [x[corner]!, next];
      while (next < lines.length && lines[next]! < to) next += 1;
      while (next > 0 && lines[next - 1]! >= to) next -= 1;
      if (next === before) continue;
      const isRight = next > before;
      const [left, right] = isRight ? [corner - 1, corner] : [corner, corner - 1];
      begun[isRight ? before : next]!.push(ends.length);
      ends.push(isRight ? next : before);
      owners.push(2 * shape + (isRight ? 1 : 0));
      figures.push(x[left]!, y[left]!, x[right]! - x[left]!, y[right]! - y[left]!);
    }
  }
  return { begun, ends, owners, figures };
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
