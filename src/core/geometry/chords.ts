import { largestStretch } from "./affine.ts";
import { arcPoint, type EllipseArc } from "./ellipse-arc.ts";
import type { Point } from "./point.ts";

/**
 * How many equal steps of the parameter keep every chord of a Bézier curve within `tolerance` of the curve; at least 1.
 * A chord over a step h strays by at most h²/8 times the largest second derivative, which for degree n is at most
 * n (n − 1) times the largest second difference of the control points.
 */
export function bezierChords(points: readonly Point[], tolerance: number): number {
  const degree = points.length - 1;
  let bend = 0;
  for (let i = 0; i + 2 < points.length; i += 1) {
    const [p, q, r] = [points[i]!, points[i + 1]!, points[i + 2]!];
    bend = Math.max(bend, Math.hypot(p[0] - 2 * q[0] + r[0], p[1] - 2 * q[1] + r[1]));
  }
  return Math.max(1, Math.ceil(Math.sqrt((degree * (degree - 1) * bend) / (8 * tolerance))));
}

/** The point of a Bézier curve of any degree at `t` in 0…1, by de Casteljau's construction. */
export function bezierPoint(points: readonly Point[], t: number): Point {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  for (let last = points.length - 1; last > 0; last -= 1) {
    for (let i = 0; i < last; i += 1) {
      xs[i] = xs[i]! + (xs[i + 1]! - xs[i]!) * t;
      ys[i] = ys[i]! + (ys[i + 1]! - ys[i]!) * t;
    }
  }
  return [xs[0]!, ys[0]!];
}

/**
 * How many equal steps keep every chord of an elliptical arc within `tolerance` of it; at least one a quarter turn.
 * A chord over the angle s strays from the unit circle by 1 − cos(s/2) = 2 sin²(s/4); the ellipse is that circle
 * under a map which stretches nothing by more than its greater singular value.
 */
export function arcChords(arc: EllipseArc, tolerance: number): number {
  const stretch = largestStretch(arc.cosAxis, arc.sinAxis);
  const quarter = Math.PI / 2;
  const step = stretch > tolerance ? Math.min(quarter, 4 * Math.asin(Math.sqrt(tolerance / (2 * stretch)))) : quarter;
  return Math.max(1, Math.ceil(Math.abs(arc.sweep) / step));
}

/** The points after the start of an arc cut into `count` chords; the last one is the arc's end. */
export function arcPoints(arc: EllipseArc, count: number): Point[] {
  return Array.from({ length: count }, (_, i) => arcPoint(arc, arc.from + (arc.sweep * (i + 1)) / count));
}

/** The points after the start of a Bézier curve cut into `count` chords; the last one is the curve's end. */
export function bezierPoints(points: readonly Point[], count: number): Point[] {
  return Array.from({ length: count }, (_, i) => bezierPoint(points, (i + 1) / count));
}
