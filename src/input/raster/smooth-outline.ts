import { bezierChords, bezierPoints } from "../../core/geometry/chords.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import { between, cornersOf } from "./corners.ts";
import { fitCurve } from "./fit-curve.ts";

/** Chords stray from a curve by so much of the tolerance. */
const CHORD = 1 / 8;
/** A corner shows over so many tolerances to both sides, and so many pixels: fewer show nothing but the grid. */
const ARM = { tolerances: 3, pixels: 4 };
/** Shorter outlines, in points, have nothing to smooth. */
const FEW = 8;

/**
 * An outline of the pixel grid as smooth curves between its corners, cut into chords: no point of the old outline lies further
 * than `tolerance` from the new one, lengths in pixels.
 */
export function smoothOutline(ring: Ring, tolerance: number): Ring {
  if (ring.length < FEW) return ring;
  const corners = cornersOf(ring, Math.max(ARM.tolerances * tolerance, ARM.pixels));
  const knots = corners.length > 1 ? corners : extremesOf(ring, corners);
  const isCorner = new Set(corners);
  const directions = { at: (knot: number) => (isCorner.has(knot) ? undefined : directionAt(ring, knot)) };
  return knots.flatMap((knot, i): Point[] => {
    const next = knots[(i + 1) % knots.length]!;
    const curves = fitCurve(stretch(ring, knot, next), tolerance, {
      start: directions.at(knot),
      end: directions.at(next),
    });
    return curves.flatMap((curve) => [
      curve[0]!,
      ...bezierPoints(curve, bezierChords(curve, CHORD * tolerance)).slice(0, -1),
    ]);
  });
}

/** Where a ring is furthest left, up, right and down, and at its corner if it has one, ascending. */
function extremesOf(ring: Ring, corners: readonly number[]): number[] {
  const best = [0, 0, 0, 0];
  const ahead = [([x]: Point) => -x, ([, y]: Point) => -y, ([x]: Point) => x, ([, y]: Point) => y];
  ring.forEach((point, i) => {
    for (const [k, by] of ahead.entries()) if (by(point) > by(ring[best[k]!]!)) best[k] = i;
  });
  return [...new Set([...best, ...corners])].sort((a, b) => a - b);
}

/** Where a ring heads at a point that is no corner: a unit vector. */
function directionAt(ring: Ring, at: number): Point {
  const [from, to] = [ring.at(at - 2)!, ring[(at + 2) % ring.length]!];
  const length = between(from, to) || 1;
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** The points of a ring from one place to another, both included. */
function stretch(ring: Ring, from: number, to: number): Point[] {
  return from < to ? ring.slice(from, to + 1) : [...ring.slice(from), ...ring.slice(0, to + 1)];
}
