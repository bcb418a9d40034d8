import { type Affine, mapPoint } from "../../core/geometry/affine.ts";
import { arcChords, arcPoints, bezierChords, bezierPoints } from "../../core/geometry/chords.ts";
import { arcFromEnds, mapArc } from "../../core/geometry/ellipse-arc.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import type { PathSegment } from "./path-segment.ts";
import { ValueError } from "./picture-error.ts";

/** A curve that needs more chords is thousands of times as large as the picture. */
const MOST_CHORDS = 100_000;
const MOST_POINTS = 2_000_000;

/**
 * The outlines of a path after a map, open ones closed for filling. Curves become chords whose ends lie on the true
 * curve; no point repeats the one before it; outlines of fewer than 3 points are left out.
 *
 * @param tolerance largest distance from a chord to its curve, in the unit the map leads to; > 0
 * @throws ValueError when a coordinate overflows or a curve is out of all proportion to the tolerance
 */
export function outlinePath(segments: readonly PathSegment[], map: Affine, tolerance: number): Ring[] {
  const tracer = new Tracer(map, tolerance);
  for (const segment of segments) tracer.follow(segment);
  tracer.finish();
  return tracer.rings;
}

/** Whether any outline encloses an area, that is, has points off a single straight line. */
export function hasArea(rings: readonly Ring[]): boolean {
  return rings.some((ring) => !isStraight(ring));
}

class Tracer {
  readonly rings: Ring[] = [];
  readonly #map: Affine;
  readonly #tolerance: number;
  #ring: Point[] = [];
  #count = 0;
  #at: Point = [0, 0];
  #start: Point = [0, 0];

  constructor(map: Affine, tolerance: number) {
    this.#map = map;
    this.#tolerance = tolerance;
  }

  follow(segment: PathSegment): void {
    if (segment.kind === "move" || segment.kind === "close") {
      this.finish();
      this.#start = segment.kind === "move" ? segment.to : this.#start;
      this.#at = this.#start;
      return;
    }
    if (this.#ring.length === 0) this.#push(mapPoint(this.#map, this.#at));
    for (const point of this.#between(segment)) this.#push(point);
    this.#push(mapPoint(this.#map, segment.to));
    this.#at = segment.to;
  }

  finish(): void {
    const ring = this.#ring;
    while (ring.length > 1 && isSame(ring[0]!, ring.at(-1)!)) ring.pop();
    if (ring.length >= 3) this.rings.push(ring);
    this.#ring = [];
  }

  /** The points strictly between the ends of a segment. */
  #between(segment: Exclude<PathSegment, { kind: "move" | "close" }>): Point[] {
    if (segment.kind === "curve") {
      const points = [this.#at, ...segment.controls, segment.to].map((point) => mapPoint(this.#map, point));
      return bezierPoints(points, this.#within(bezierChords(points, this.#tolerance))).slice(0, -1);
    }
    if (segment.kind === "line" || Math.min(...segment.radii) === 0 || isSame(this.#at, segment.to)) return [];
    const arc = mapArc(this.#map, arcFromEnds({ ...segment, start: this.#at, end: segment.to }));
    return arcPoints(arc, this.#within(arcChords(arc, this.#tolerance))).slice(0, -1);
  }

  #within(chords: number): number {
    if (chords <= MOST_CHORDS) return chords;
    throw new ValueError((what) => say.pictureCurveTooLarge({ what }));
  }

  #push(point: Point): void {
    if (!Number.isFinite(point[0]) || !Number.isFinite(point[1])) {
      throw new ValueError((what) => say.pictureCoordinates({ what }));
    }
    const last = this.#ring.at(-1);
    if (last !== undefined && isSame(last, point)) return;
    this.#count += 1;
    if (this.#count > MOST_POINTS)
      throw new ValueError((what) => say.pictureOutlinePoints({ what, most: MOST_POINTS }));
    this.#ring.push(point);
  }
}

function isSame(p: Point, q: Point): boolean {
  return p[0] === q[0] && p[1] === q[1];
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
