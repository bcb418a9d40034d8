import type { Point, Ring } from "./point.ts";

/** A side of an outline, from one corner to the next. */
export type Edge = readonly [Point, Point];

/** A stretch of a line, from its lesser end. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Where a level line at y meets closed outlines: x, from left to right. An edge counts its upper end and not its lower one,
 * so that crossings come in pairs also where the line runs through a corner. Pictures are read by
 * picture/column.ts instead: many columns of one picture, by its fill rule.
 */
export function levelCrossings(rings: readonly Ring[], y: number): number[] {
  return edgesOver(rings, 1, y)
    .map(([a, b]) => a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]))
    .sort((a, b) => a - b);
}

/** Where an upright line at x meets closed outlines: y, from the top down; an edge counts its left end. */
export function uprightCrossings(rings: readonly Ring[], x: number): number[] {
  return edgesAcross(rings, x)
    .map(([a, b]) => a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]))
    .sort((a, b) => a - b);
}

/** The edges of closed outlines that an upright line at x meets; an edge counts its left end. */
export function edgesAcross(rings: readonly Ring[], x: number): Edge[] {
  return edgesOver(rings, 0, x);
}

/** What lies inside the outlines between crossings in order: from the first to the second, from the third to the fourth. */
export function stretchesOf(crossings: readonly number[]): Stretch[] {
  return Array.from({ length: Math.floor(crossings.length / 2) }, (_, i) => ({
    from: crossings[2 * i]!,
    to: crossings[2 * i + 1]!,
  }));
}

/** The edges with one end beyond a value along an axis, without a list of the others. */
function edgesOver(rings: readonly Ring[], axis: 0 | 1, value: number): Edge[] {
  const found: Edge[] = [];
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 1) {
      const a = ring[i]!;
      const b = ring[i + 1 < ring.length ? i + 1 : 0]!;
      if (a[axis] <= value !== b[axis] <= value) found.push([a, b]);
    }
  return found;
}
