import type { Point } from "../../core/geometry/point.ts";
import { dot, minus, plus, scaled, size } from "./vector.ts";

/** A cubic Bézier curve. */
export type Curve = readonly [Point, Point, Point, Point];

/** A straight stretch as a curve. */
export function line(p0: Point, p3: Point): Curve {
  const third = scaled(minus(p3, p0), 1 / 3);
  return [p0, plus(p0, third), minus(p3, third), p3];
}

/** A curve with the given headings, its handles a third of its chord. */
export function thirds(p0: Point, p3: Point, start: Point, end: Point): Curve {
  const third = size(minus(p3, p0)) / 3;
  return [p0, plus(p0, scaled(start, third)), plus(p3, scaled(end, third)), p3];
}

/** The point of a curve at `t` in 0…1. */
export function pointAt([p0, p1, p2, p3]: Curve, t: number): Point {
  const [b0, b1, b2, b3] = weights(t);
  return [b0 * p0[0] + b1 * p1[0] + b2 * p2[0] + b3 * p3[0], b0 * p0[1] + b1 * p1[1] + b2 * p2[1] + b3 * p3[1]];
}

/** One step of Newton's method toward the place where the curve is nearest to a point. */
export function better(curve: Curve, point: Point, t: number): number {
  const [p0, p1, p2, p3] = curve;
  const off = minus(pointAt(curve, t), point);
  const s = 1 - t;
  const [d0, d1, d2] = [minus(p1, p0), minus(p2, p1), minus(p3, p2)];
  const slope = scaled(plus(plus(scaled(d0, s * s), scaled(d1, 2 * s * t)), scaled(d2, t * t)), 3);
  const bend = scaled(plus(scaled(minus(d1, d0), s), scaled(minus(d2, d1), t)), 6);
  const by = dot(slope, slope) + dot(off, bend);
  const to = by === 0 ? t : t - dot(off, slope) / by;
  return Math.min(1, Math.max(0, to));
}

/** How much each control point counts at `t`: Bernstein’s polynomials. */
export function weights(t: number): readonly [number, number, number, number] {
  const s = 1 - t;
  return [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
}
