import type { Point } from "./point.ts";

/**
 * An affine map in the order of SVG's `matrix(a b c d e f)`: x' = a x + c y + e, y' = b x + d y + f.
 * Source: SVG 2, coordinate systems; CSS Transforms 1, "Mathematical description".
 */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

/** The map that shifts by x to the right and y down. */
export function translation(x: number, y: number): Affine {
  return [1, 0, 0, 1, x, y];
}

/** The map that does `inner` first and `outer` after it. */
export function compose(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

/** Where the map takes a point. */
export function mapPoint([a, b, c, d, e, f]: Affine, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** Where the map takes a direction: the linear part alone. */
export function mapVector([a, b, c, d]: Affine, [x, y]: Point): Point {
  return [a * x + c * y, b * x + d * y];
}

/** The factor by which areas change; negative when the map mirrors, 0 when it flattens. */
export function determinant([a, b, c, d]: Affine): number {
  return a * d - b * c;
}

/** The largest stretch of a map whose columns are `u` and `v`: its greater singular value, ≥ 0. */
export function largestStretch(u: Point, v: Point): number {
  return (Math.hypot(u[0] + v[1], u[1] - v[0]) + Math.hypot(u[0] - v[1], u[1] + v[0])) / 2;
}

/** The map back; its numbers are no numbers where the map flattens. */
export function inverse(map: Affine): Affine {
  const [a, b, c, d, e, f] = map;
  const by = determinant(map);
  return [d / by, -b / by, -c / by, a / by, (c * f - d * e) / by, (b * e - a * f) / by];
}
