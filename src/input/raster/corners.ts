import type { Point, Ring } from "../../core/geometry/point.ts";

/** An outline turns by more than this at a corner, radians: 40°. */
const CORNER = (40 * Math.PI) / 180;

/**
 * Places in a ring where it has a corner, ascending: there it turns sharply as seen over `arm` to both sides, and nowhere
 * within that reach it turns more. A circle of less radius than about 1.4 arms is all corners, and so it stays as it is.
 */
export function cornersOf(ring: Ring, arm: number): number[] {
  const along = distancesAlong(ring);
  const turns = turnsOf(ring, along, arm);
  const total = along.at(-1)!;
  const corners: number[] = [];
  for (let i = 0; i < ring.length; i += 1)
    if (turns[i]! > CORNER && isGreatest(turns, along, { i, total, arm })) corners.push(i);
  return corners;
}

/** Way from the first point to each, and all round at the end. */
function distancesAlong(ring: Ring): Float64Array {
  const along = new Float64Array(ring.length + 1);
  ring.forEach((point, i) => {
    along[i + 1] = along[i]! + between(point, ring[(i + 1) % ring.length]!);
  });
  return along;
}

/** By how much the ring turns at each point, from the direction over an arm before it to that over an arm behind it. */
function turnsOf(ring: Ring, along: Float64Array, arm: number): Float64Array {
  const count = ring.length;
  const total = along[count]!;
  // Arms that meet on the other side of a small ring would see nothing of its corners.
  const reach = Math.min(arm, total / 6);
  const at = (k: number): number => along[k % count]! + Math.floor(k / count) * total;
  let before = 0;
  let behind = count;
  return Float64Array.from({ length: count }, (_, i) => {
    const here = count + i;
    while (at(here) - at(before + 1) >= reach) before += 1;
    if (behind <= here) behind = here + 1;
    while (at(behind) - at(here) < reach) behind += 1;
    const [from, mid, to] = [ring[before % count]!, ring[i]!, ring[behind % count]!];
    const [ax, ay] = [mid[0] - from[0], mid[1] - from[1]];
    const [bx, by] = [to[0] - mid[0], to[1] - mid[1]];
    return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
  });
}

interface Place {
  readonly i: number;
  readonly total: number;
  readonly arm: number;
}

/** Whether no point within an arm turns more; of the same, the first counts. */
function isGreatest(turns: Float64Array, along: Float64Array, { i, total, arm }: Place): boolean {
  const count = turns.length;
  for (const step of [-1, 1]) {
    for (let k = 1; k < count; k += 1) {
      const j = (i + step * k + count) % count;
      const way = Math.abs(along[j]! - along[i]!);
      if (Math.min(way, total - way) > arm) break;
      if (turns[j]! > turns[i]! || (turns[j] === turns[i] && step < 0)) return false;
    }
  }
  return true;
}

export function between([x, y]: Point, [x2, y2]: Point): number {
  return Math.hypot(x2 - x, y2 - y);
}
