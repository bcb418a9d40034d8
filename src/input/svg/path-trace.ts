import { type Affine, mapPoint } from "../../core/geometry/affine.ts";
import { arcChords, arcPoints, bezierChords, bezierPoints } from "../../core/geometry/chords.ts";
import { arcFromEnds, mapArc } from "../../core/geometry/ellipse-arc.ts";
import type { Point } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import type { PathSegment } from "./path-segment.ts";
import { ValueError } from "./picture-error.ts";

/** A curve that needs more chords is thousands of times as large as the picture. */
const MOST_CHORDS = 100_000;

/** Points of one path. */
export const MOST_PATH_POINTS = 2_000_000;

/** A subpath as straight pieces. No point repeats the one before it, nor the last the first of a closed one. */
export interface PathTrace {
  readonly points: readonly Point[];
  /** Whether a point lies inside a curve, where the path makes no corner. */
  readonly smooth: readonly boolean[];
  readonly closed: boolean;
  /** Where a subpath of a single point heads, of length 1. */
  readonly heading: Point;
}

/**
 * The subpaths of a path after a map, but those that are moves alone. Curves become chords whose ends lie on the true curve.
 *
 * @param tolerance largest distance from a chord to its curve, in the unit the map leads to; > 0
 * @throws ValueError when a coordinate overflows or a curve is out of all proportion to the tolerance
 */
export function tracePath(segments: readonly PathSegment[], map: Affine, tolerance: number): PathTrace[] {
  const tracer = new Tracer(map, tolerance);
  for (const segment of segments) tracer.follow(segment);
  tracer.finish(false);
  return tracer.traces;
}

class Tracer {
  readonly traces: PathTrace[] = [];
  readonly #map: Affine;
  readonly #tolerance: number;
  #points: Point[] = [];
  #smooth: boolean[] = [];
  #count = 0;
  #at: Point = [0, 0];
  #start: Point = [0, 0];

  constructor(map: Affine, tolerance: number) {
    this.#map = map;
    this.#tolerance = tolerance;
  }

  follow(segment: PathSegment): void {
    if (segment.kind === "move") {
      this.finish(false);
      this.#start = segment.to;
      this.#at = this.#start;
      return;
    }
    if (this.#points.length === 0) this.#push(mapPoint(this.#map, this.#at), false);
    if (segment.kind === "close") {
      this.finish(true);
      this.#at = this.#start;
      return;
    }
    for (const point of this.#between(segment)) this.#push(point, true);
    this.#push(mapPoint(this.#map, segment.to), false);
    this.#at = segment.to;
  }

  finish(closed: boolean): void {
    const [points, smooth] = [this.#points, this.#smooth];
    while (closed && points.length > 1 && isSame(points[0]!, points.at(-1)!)) {
      points.pop();
      smooth.pop();
    }
    if (points.length > 0) this.traces.push({ points, smooth, closed, heading: [1, 0] });
    this.#points = [];
    this.#smooth = [];
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

  #push(point: Point, smooth: boolean): void {
    if (!Number.isFinite(point[0]) || !Number.isFinite(point[1])) {
      throw new ValueError((what) => say.pictureCoordinates({ what }));
    }
    const last = this.#points.at(-1);
    if (last !== undefined && isSame(last, point)) return;
    this.#count += 1;
    if (this.#count > MOST_PATH_POINTS)
      throw new ValueError((what) => say.pictureOutlinePoints({ what, most: MOST_PATH_POINTS }));
    this.#points.push(point);
    this.#smooth.push(smooth);
  }
}

function isSame(p: Point, q: Point): boolean {
  return p[0] === q[0] && p[1] === q[1];
}
