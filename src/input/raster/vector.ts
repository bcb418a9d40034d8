import type { Point } from "../../core/geometry/point.ts";

export function plus(a: Point, b: Point): Point {
  return [a[0] + b[0], a[1] + b[1]];
}

export function minus(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1]];
}

export function scaled(a: Point, by: number): Point {
  return [a[0] * by, a[1] * by];
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

export function size(a: Point): number {
  return Math.hypot(a[0], a[1]);
}

/** Of length 1; to the right where there is no direction. */
export function unit(a: Point): Point {
  const length = size(a);
  return length === 0 ? [1, 0] : scaled(a, 1 / length);
}
