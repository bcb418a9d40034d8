import type { Point, Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { MOST_PATH_POINTS, type PathTrace } from "./path-trace.ts";
import { ValueError } from "./picture-error.ts";

/** How a line is drawn along a path, in the path's own unit. */
export interface Pen {
  /** > 0 */
  readonly width: number;
  readonly cap: "butt" | "round" | "square";
  readonly join: "miter" | "round" | "bevel";
  /** Greatest length of a miter in widths; ≥ 1. */
  readonly miterLimit: number;
}

/**
 * The area of a line along subpaths, as outlines under the nonzero rule. It is the sum of a strip on each side of every piece
 * and of a wedge at every outer corner, all running the same way round, so no two of them take anything away from each other.
 * Source: SVG 2, painting, "Computing the shape of the stroke".
 *
 * @param tolerance how far round corners and caps may stray, in the path's unit; > 0
 * @throws ValueError where it needs too many points
 */
export function outlineStroke(traces: readonly PathTrace[], pen: Pen, tolerance: number): Ring[] {
  const stroker = new Stroker(pen, tolerance);
  return traces.flatMap((trace) => stroker.outline(trace));
}

class Stroker {
  readonly #pen: Pen;
  readonly #half: number;
  /** Angle between the points of round corners. */
  readonly #step: number;
  /** The cosine of a turn that needs no more than one point. */
  readonly #straight: number;
  #count = 0;

  constructor(pen: Pen, tolerance: number) {
    this.#pen = pen;
    this.#half = pen.width / 2;
    this.#step = Math.max(0.005, 2 * Math.acos(Math.max(0, 1 - tolerance / this.#half)));
    this.#straight = Math.cos(this.#step);
  }

  outline({ points, smooth, closed, heading }: PathTrace): Ring[] {
    if (points.length === 1) return this.#dot(points[0]!, heading);
    const back = { points: points.toReversed(), smooth: smooth.toReversed() };
    if (closed) return [this.#side(points, smooth, true), this.#side(back.points, back.smooth, true)];
    return [[...this.#side(points, smooth, false), ...this.#side(back.points, back.smooth, false)]];
  }

  /** A line without length shows as its caps. */
  #dot(at: Point, heading: Point): Ring[] {
    if (this.#pen.cap === "butt") return [];
    const ring: Point[] = [];
    this.#cap(ring, at, heading);
    this.#cap(ring, at, [-heading[0], -heading[1]]);
    return [ring];
  }

  /** The offset line on the right hand of a path (y down), with the cap at its end. */
  #side(points: readonly Point[], smooth: readonly boolean[], closed: boolean): Point[] {
    const ring: Point[] = [];
    const count = closed ? points.length : points.length - 1;
    const last = points.length - 1;
    let before = closed ? between(points[last]!, points[0]!) : between(points[0]!, points[1]!);
    if (!closed) this.#put(ring, points[0]!, before.along, 0);
    for (let i = closed ? 0 : 1; i < count; i += 1) {
      const after = between(points[i]!, points[i === last ? 0 : i + 1]!);
      this.#corner(ring, points[i]!, before, after, smooth[i]!);
      before = after;
    }
    if (!closed) this.#cap(ring, points[last]!, before.along);
    return ring;
  }

  #corner(ring: Point[], at: Point, a: Piece, b: Piece, smooth: boolean): void {
    const cross = a.along[0] * b.along[1] - a.along[1] * b.along[0];
    const dot = a.along[0] * b.along[0] + a.along[1] * b.along[1];
    // A piece that is shorter than the corner is deep lets the outline pass through the corner itself.
    const cramped = cross > 0 && (dot <= 0 || this.#half * cross >= Math.min(a.length, b.length));
    const mitred = cross <= 0 && !smooth && this.#pen.join === "miter" && 2 <= this.#pen.miterLimit ** 2 * (1 + dot);
    if (mitred || (dot >= this.#straight && !cramped)) {
      const reach = this.#half / (1 + dot);
      const sum: Point = [a.along[0] + b.along[0], a.along[1] + b.along[1]];
      this.#push(ring, [at[0] - sum[1] * reach, at[1] + sum[0] * reach]);
      return;
    }
    if (cross > 0) {
      this.#put(ring, at, a.along, 0);
      if (cramped) this.#push(ring, at);
      this.#put(ring, at, b.along, 0);
      return;
    }
    const turn = cross === 0 && dot < 0 ? -Math.PI : Math.atan2(cross, dot);
    this.#put(ring, at, a.along, 0);
    if (smooth || this.#pen.join === "round") this.#arc(ring, at, a.along, turn);
    this.#put(ring, at, b.along, 0);
  }

  #cap(ring: Point[], at: Point, along: Point): void {
    const half = this.#half;
    const ahead: Point = this.#pen.cap === "square" ? [at[0] + along[0] * half, at[1] + along[1] * half] : at;
    this.#put(ring, ahead, along, 0);
    if (this.#pen.cap === "round") this.#arc(ring, at, along, -Math.PI);
    this.#put(ring, ahead, along, -Math.PI);
  }

  /** The points between the ends of a turn. */
  #arc(ring: Point[], at: Point, along: Point, turn: number): void {
    const count = Math.ceil(Math.abs(turn) / this.#step);
    for (let i = 1; i < count; i += 1) this.#put(ring, at, along, (turn * i) / count);
  }

  /** The point half a width to the right of a direction that is turned by an angle. */
  #put(ring: Point[], at: Point, [x, y]: Point, turn: number): void {
    const [cos, sin] = turn === 0 ? [1, 0] : [Math.cos(turn), Math.sin(turn)];
    this.#push(ring, [at[0] - (x * sin + y * cos) * this.#half, at[1] + (x * cos - y * sin) * this.#half]);
  }

  #push(ring: Point[], point: Point): void {
    this.#count += 1;
    if (this.#count > MOST_PATH_POINTS)
      throw new ValueError((what) => say.pictureOutlinePoints({ what, most: MOST_PATH_POINTS }));
    ring.push(point);
  }
}

/** A straight piece of a path: where it heads, of length 1, and its length. */
interface Piece {
  readonly along: Point;
  readonly length: number;
}

function between(from: Point, to: Point): Piece {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(x, y);
  return { along: [x / length, y / length], length };
}
