import type { Affine } from "../../core/geometry/affine.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import type { PathSegment } from "./path-segment.ts";
import { tracePath } from "./path-trace.ts";

/**
 * The outlines of a path after a map, open ones closed for filling. Curves become chords whose ends lie on the true
 * curve; no point repeats the one before it; outlines of fewer than 3 points are left out.
 *
 * @param tolerance largest distance from a chord to its curve, in the unit the map leads to; > 0
 * @throws ValueError when a coordinate overflows or a curve is out of all proportion to the tolerance
 */
export function outlinePath(segments: readonly PathSegment[], map: Affine, tolerance: number): Ring[] {
  return tracePath(segments, map, tolerance)
    .map(({ points }) => withoutReturn(points))
    .filter((ring) => ring.length >= 3);
}

/** Whether any outline encloses an area, that is, has points off a single straight line. */
export function hasArea(rings: readonly Ring[]): boolean {
  return rings.some((ring) => !isStraight(ring));
}

/** An outline without the points at its end that repeat its first. */
function withoutReturn(points: readonly Point[]): Ring {
  let length = points.length;
  while (length > 1 && points[0]![0] === points[length - 1]![0] && points[0]![1] === points[length - 1]![1])
    length -= 1;
  return length === points.length ? points : points.slice(0, length);
}

function isStraight(ring: Ring): boolean {
  const first = ring[0]!;
  const away = (p: Point): number => Math.hypot(p[0] - first[0], p[1] - first[1]);
  const far = ring.reduce((best, p) => (away(p) > away(best) ? p : best), first);
  const reach = away(far);
  const [ux, uy] = [(far[0] - first[0]) / reach, (far[1] - first[1]) / reach];
  // Rounding leaves collinear points off the line by a few ulps of the coordinates.
  const least = 1e-12 * Math.max(reach, Math.hypot(first[0], first[1]));
  return ring.every((p) => Math.abs(ux * (p[1] - first[1]) - uy * (p[0] - first[0])) <= least);
}
