import type { Area } from "./area.ts";
import type { Point, Ring } from "./point.ts";

/** Sides shorter than this are joined to their neighbours where the outline keeps its place, mm. */
const SHORT = 0.2;

/** How far an outline may be moved in all where short sides are joined, as a share of the simplifier's own tolerance. */
const JOIN = 1.2;

/** Fewer points: none of the old ones lies further than `tolerance` from the new outline. */
export function thinOut(area: Area, tolerance: number): Area {
  return area.map((ring) => thinRing(ring, tolerance)).filter((ring) => ring.length >= 3);
}

/** Outlines for cutting: thinned out, and without sides under 0.2 mm but for those that the shape itself has. */
export function simplify(area: Area, tolerance: number): Area {
  return area
    .map((ring) => ({ ring, thin: thinRing(ring, tolerance) }))
    .filter(({ thin }) => thin.length >= 3)
    .map(({ ring, thin }) => withoutShort(keptOf(ring, thin), tolerance));
}

/** Splits the ring at its leftmost and rightmost points, so that the open simplifier keeps its shape. */
function thinRing(ring: Ring, tolerance: number): Ring {
  const leftmost = ring.reduce((best, point, i) => (point[0] < ring[best]![0] ? i : best), 0);
  const turned = [...ring.slice(leftmost), ...ring.slice(0, leftmost)];
  const rightmost = turned.reduce((best, point, i) => (point[0] > turned[best]![0] ? i : best), 0);
  const there = thin(turned.slice(0, rightmost + 1), tolerance);
  const back = thin([...turned.slice(rightmost), turned[0]!], tolerance);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

/** Ramer, Douglas and Peucker: keeps the point furthest from the chord while it is further than the tolerance. */
function thin(points: readonly Point[], tolerance: number): Point[] {
  const kept = new Uint8Array(points.length);
  kept[0] = 1;
  kept[points.length - 1] = 1;
  const open: number[] = [0, points.length - 1];
  while (open.length > 0) {
    const last = open.pop()!;
    const first = open.pop()!;
    let furthest = -1;
    let most = tolerance * tolerance;
    for (let i = first + 1; i < last; i += 1) {
      const away = squaredFrom(points[i]!, points[first]!, points[last]!);
      if (away > most) {
        furthest = i;
        most = away;
      }
    }
    if (furthest < 0) continue;
    kept[furthest] = 1;
    open.push(first, furthest, furthest, last);
  }
  return points.filter((_, i) => kept[i] === 1);
}

/** A point that stays, with those that were dropped after it. */
interface KeptPoint {
  readonly point: Point;
  readonly dropped: Point[];
}

/** The points that a ring was thinned out to, which are some of its own in their order. */
function keptOf(ring: Ring, thin: Ring): KeptPoint[] {
  const kept: KeptPoint[] = [];
  const start = ring.indexOf(thin[0]!);
  for (const point of [...ring.slice(start), ...ring.slice(0, start)]) {
    if (point === thin[kept.length]) kept.push({ point, dropped: [] });
    else kept.at(-1)!.dropped.push(point);
  }
  return kept;
}

function withoutShort(kept: KeptPoint[], tolerance: number): Ring {
  const at = (k: number): KeptPoint => kept[(k + kept.length) % kept.length]!;
  const canDrop = (k: number): boolean => {
    const lost = [...at(k - 1).dropped, at(k).point, ...at(k).dropped];
    return lost.every((point) => squaredFrom(point, at(k - 1).point, at(k + 1).point) <= (JOIN * tolerance) ** 2);
  };
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const [a, b] = [at(i).point, at(i + 1).point];
    const drop = Math.hypot(b[0] - a[0], b[1] - a[1]) < SHORT ? [i + 1, i].find(canDrop) : undefined;
    if (drop === undefined) {
      i += 1;
      continue;
    }
    at(drop - 1).dropped.push(at(drop).point, ...at(drop).dropped);
    kept.splice((drop + kept.length) % kept.length, 1);
    i = Math.max(0, i - 2);
  }
  return kept.map(({ point }) => point);
}

/** Squared distance of a point from a stretch of line. */
function squaredFrom(point: Point, from: Point, to: Point): number {
  const alongX = to[0] - from[0];
  const alongY = to[1] - from[1];
  const length = alongX * alongX + alongY * alongY;
  let x = point[0] - from[0];
  let y = point[1] - from[1];
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, (x * alongX + y * alongY) / length));
  x -= share * alongX;
  y -= share * alongY;
  return x * x + y * y;
}
