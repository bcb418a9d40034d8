import { distanceToSide, type Point, type Side, sidesOf } from "../../core/geometry/plane.ts";

/** Sides of a line: a closed one has a side back to its start. */
export function sidesOfLine(points: readonly Point[], closed: boolean): readonly Side[] {
  return closed ? sidesOf(points) : sidesOf(points).slice(0, -1);
}

export const lengthOfSide = ([a, b]: Side): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Pairs of sides that lie on each other over more than `least` mm, by a sweep from left to right. */
export function coincident(sides: readonly Side[], least = 0.01): (readonly [Side, Side])[] {
  const sorted = sides
    .map((side) => ({ side, left: Math.min(side[0][0], side[1][0]), right: Math.max(side[0][0], side[1][0]) }))
    .sort((a, b) => a.left - b.left);
  const found: (readonly [Side, Side])[] = [];
  let open: typeof sorted = [];
  for (const one of sorted) {
    open = open.filter((other) => other.right >= one.left - 1e-6);
    for (const other of open) if (overlap(one.side, other.side) > least) found.push([one.side, other.side]);
    open.push(one);
  }
  return found;
}

/** Length over which two sides lie on each other; 0 where they stand apart or cross. */
function overlap([a, b]: Side, [c, d]: Side): number {
  const length = lengthOfSide([a, b]);
  if (length === 0) return 0;
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const along = ([x, y]: Point): number => (x - a[0]) * ux + (y - a[1]) * uy;
  const off = ([x, y]: Point): number => Math.abs((x - a[0]) * uy - (y - a[1]) * ux);
  if (off(c) > 1e-3 || off(d) > 1e-3) return 0;
  return Math.min(length, Math.max(along(c), along(d))) - Math.max(0, Math.min(along(c), along(d)));
}

/** Whether dropping one end of a side would move the outline by no more than `most`: then the side need not be that short. */
export function canBeDropped(ring: readonly Point[], i: number, most: number): boolean {
  const at = (k: number): Point => ring[(k + ring.length) % ring.length]!;
  const [before, a, b, after] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
  return distanceToSide(a, [before, b]) <= most || distanceToSide(b, [a, after]) <= most;
}
