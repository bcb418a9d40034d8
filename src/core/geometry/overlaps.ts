import type { Ring } from "./point.ts";

/**
 * How many pairs of edges stand beside each other at some height: as many may cross, and the polygon library compares them.
 * Sources: sorting of intervals by their ends; an edge is beside all that have begun and not ended where it begins.
 */
export function overlaps(rings: readonly Ring[]): number {
  const begins: number[] = [];
  const ends: number[] = [];
  for (const ring of rings) {
    for (const [i, [, y]] of ring.entries()) {
      const nextY = ring[(i + 1) % ring.length]![1];
      begins.push(Math.min(y, nextY));
      ends.push(Math.max(y, nextY));
    }
  }
  const [first, last] = [Float64Array.from(begins).sort(), Float64Array.from(ends).sort()];
  let pairs = 0;
  let ended = 0;
  for (const [begun, y] of first.entries()) {
    while (last[ended]! < y) ended += 1;
    pairs += begun - ended;
  }
  return pairs;
}
