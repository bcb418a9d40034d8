import type { Area } from "./area.ts";
import type { Point, Ring } from "./point.ts";

/**
 * The part of a ring inside a convex outline, after Sutherland and Hodgman (1974), one side at a time.
 * Parts that the outline separates stay joined along its edge; such joins enclose no area, so the filled region
 * under either fill rule is the ring's own region cut by the outline. May be empty.
 *
 * @param convex corners in either direction, in the ring's unit
 */
export function clipRing(ring: Ring, convex: Ring): Ring {
  const turn = Math.sign(doubleArea(convex));
  let rest: Ring = ring;
  convex.forEach((corner, i) => {
    rest = cutBySide(rest, corner, convex[(i + 1) % convex.length]!, turn);
  });
  return rest;
}

/** The same of an area: its outlines that reach into the convex one. */
export function clipArea(area: Area, convex: Ring): Area {
  return area.map((ring) => clipRing(ring, convex)).filter((ring) => ring.length > 0);
}

/** Whether no point of a ring lies outside a convex outline by more than `tolerance`, in the ring's unit. */
export function staysWithin(ring: Ring, convex: Ring, tolerance: number): boolean {
  const turn = Math.sign(doubleArea(convex));
  return convex.every((a, i) => {
    const b = convex[(i + 1) % convex.length]!;
    const least = -tolerance * Math.hypot(b[0] - a[0], b[1] - a[1]);
    return ring.every((p) => turn * cross(a, b, p) >= least);
  });
}

function cutBySide(ring: Ring, a: Point, b: Point, turn: number): Point[] {
  const kept: Point[] = [];
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const atP = turn * cross(a, b, p);
    const atQ = turn * cross(a, b, q);
    if (atP >= 0) kept.push(p);
    if (atP * atQ < 0) {
      const t = atP / (atP - atQ);
      kept.push([p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]);
    }
  });
  return kept;
}

function cross(a: Point, b: Point, p: Point): number {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}

function doubleArea(ring: Ring): number {
  return ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return sum + p[0] * q[1] - p[1] * q[0];
  }, 0);
}
