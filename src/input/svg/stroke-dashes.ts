import type { Point } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import type { PathTrace } from "./path-trace.ts";
import { MOST_DASHES } from "./picture-bounds.ts";
import { ValueError } from "./picture-error.ts";

/** Lengths of dashes and gaps in turn, and where in them a path begins, all in the path's unit. */
export interface Dashes {
  /** An even count, none negative, not all 0. */
  readonly lengths: readonly number[];
  readonly offset: number;
}

/** The length of subpaths. */
export function lengthOf(traces: readonly PathTrace[]): number {
  return traces.reduce((sum, trace) => sum + piecesOf(trace).reduce((part, [, , length]) => part + length, 0), 0);
}

/**
 * The dashes along subpaths, each of which begins the pattern anew. In a closed one a dash at the end goes on into one at the
 * beginning. Source: SVG 2, painting, "Dashing strokes".
 *
 * @throws ValueError where there are too many
 */
export function dashTraces(traces: readonly PathTrace[], dashes: Dashes): PathTrace[] {
  const total = dashes.lengths.reduce((sum, length) => sum + length, 0);
  if ((lengthOf(traces) / total) * dashes.lengths.length > MOST_DASHES) {
    throw new ValueError((what) => say.pictureManyDashes({ what, most: MOST_DASHES }));
  }
  return traces.flatMap((trace) => (trace.points.length < 2 ? [trace] : new Dasher(dashes, total).cut(trace)));
}

class Dasher {
  readonly #lengths: readonly number[];
  readonly #found: PathTrace[] = [];
  #at: number;
  #left: number;
  #points: Point[] = [];
  #smooth: boolean[] = [];

  constructor({ lengths, offset }: Dashes, total: number) {
    this.#lengths = lengths;
    let into = ((offset % total) + total) % total;
    let at = 0;
    while (lengths[at]! > 0 && into >= lengths[at]! && at < lengths.length - 1) into -= lengths[at++]!;
    this.#at = at;
    this.#left = lengths[at]! - into;
  }

  get #isDash(): boolean {
    return this.#at % 2 === 0;
  }

  cut(trace: PathTrace): PathTrace[] {
    const pieces = piecesOf(trace);
    const beginsInDash = this.#isDash;
    if (beginsInDash) this.#put(trace.points[0]!, false);
    for (const piece of pieces) this.#follow(piece, trace);
    const whole = this.#found.length === 0 && this.#isDash && beginsInDash;
    if (whole) return [trace];
    const endsInDash = this.#points.length > 0;
    this.#finish([1, 0]);
    if (trace.closed && beginsInDash && endsInDash && this.#found.length > 1) this.#joinEnds();
    return this.#found;
  }

  #follow([from, to, length, smooth]: TracePiece, trace: PathTrace): void {
    const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    let done = 0;
    while (length - done > this.#left) {
      done += this.#left;
      const point: Point = [from[0] + along[0] * done, from[1] + along[1] * done];
      if (this.#isDash) {
        this.#put(point, false);
        this.#finish(along);
      }
      this.#at = (this.#at + 1) % this.#lengths.length;
      this.#left = this.#lengths[this.#at]!;
      if (this.#isDash) this.#put(point, false);
    }
    this.#left -= length - done;
    if (this.#isDash) this.#put(to, smooth || trace.points.length < 2);
  }

  #put(point: Point, smooth: boolean): void {
    const last = this.#points.at(-1);
    if (last !== undefined && last[0] === point[0] && last[1] === point[1]) return;
    this.#points.push(point);
    this.#smooth.push(smooth);
  }

  #finish(heading: Point): void {
    if (this.#points.length > 0) {
      this.#found.push({ points: this.#points, smooth: this.#smooth, closed: false, heading });
    }
    this.#points = [];
    this.#smooth = [];
  }

  /** The last dash, which ends where the first begins, goes on into it. */
  #joinEnds(): void {
    const last = this.#found.pop()!;
    const first = this.#found[0]!;
    this.#found[0] = {
      points: [...last.points, ...first.points.slice(1)],
      smooth: [...last.smooth, ...first.smooth.slice(1)],
      closed: false,
      heading: first.heading,
    };
  }
}

/** From, to, length, and whether the path goes on round a curve behind it. */
type TracePiece = readonly [from: Point, to: Point, length: number, smooth: boolean];

function piecesOf({ points, smooth, closed }: PathTrace): TracePiece[] {
  const count = closed ? points.length : points.length - 1;
  return Array.from({ length: Math.max(0, count) }, (_, i): TracePiece => {
    const end = (i + 1) % points.length;
    const [from, to] = [points[i]!, points[end]!];
    return [from, to, Math.hypot(to[0] - from[0], to[1] - from[1]), smooth[end]!];
  }).filter(([, , length]) => length > 0);
}
