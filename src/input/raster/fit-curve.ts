import type { Point } from "../../core/geometry/point.ts";
import { better, type Curve, line, pointAt, thirds, weights } from "./curve.ts";
import { dot, minus, plus, scaled, size, unit } from "./vector.ts";

/** Where a stretch heads at its ends, as unit vectors along it; undefined where its own points tell. */
export interface Headings {
  readonly start: Point | undefined;
  readonly end: Point | undefined;
}

/** Turns of better places on the curve for its points, before a stretch is divided. */
const TRIES = 8;
/** A curve further off than so many tolerances is not worth them. */
const NEAR = 4;
/** A longer stretch, in points, is divided before it is fitted: so time grows with its length and not with its square. */
const LONG = 400;
/** The direction at an end is that between the points so many after it: the nearest lie on the slant that the grid gives a corner. */
const HEADING = { from: 2, to: 8 };
/** The direction inside is that between the points so many to both sides. */
const ASIDE = 3;
/** Points of a straight stretch stray by no more than this share of the tolerance, or this part of a pixel. */
const STRAIGHT = { share: 1 / 6, pixels: 0.4 };

interface Piece {
  readonly first: number;
  readonly last: number;
  readonly start: Point;
  readonly end: Point;
}

/**
 * Curves through a stretch of points, one joining the next smoothly, so that no point lies further than `tolerance` from them.
 * By least squares, divided where the fit is worst: P. J. Schneider, "An algorithm for automatically fitting digitized curves",
 * Graphics Gems (1990).
 */
export function fitCurve(points: readonly Point[], tolerance: number, headings: Headings): Curve[] {
  const last = points.length - 1;
  const whole: Piece = {
    first: 0,
    last,
    start: headings.start ?? headingFrom(points),
    end: headings.end ? scaled(headings.end, -1) : headingFrom(points.toReversed()),
  };
  const curves: Curve[] = [];
  const open = [whole];
  while (open.length > 0) {
    const piece = open.pop()!;
    const { curve, divide } = fitPiece(points, piece, tolerance);
    if (divide === undefined) {
      curves.push(curve);
      continue;
    }
    const heading = headingAt(points, divide, piece);
    open.push({ ...piece, first: divide, start: heading }, { ...piece, last: divide, end: scaled(heading, -1) });
  }
  return curves;
}

/** Where a stretch heads at its start, as its own points tell. */
function headingFrom(points: readonly Point[]): Point {
  const last = points.length - 1;
  const to = Math.min(HEADING.to, last);
  return unit(minus(points[to]!, points[to > 2 * HEADING.from ? HEADING.from : 0]!));
}

/** The best curve for a piece, and where to divide the piece if it is not good enough. */
function fitPiece(points: readonly Point[], piece: Piece, tolerance: number): { curve: Curve; divide?: number } {
  const { first, last } = piece;
  if (last - first < 2 || isStraight(points, piece, tolerance)) return { curve: line(points[first]!, points[last]!) };
  if (last - first > LONG) return { curve: line(points[first]!, points[last]!), divide: (first + last) >> 1 };
  let places = chordPlaces(points, piece);
  let curve = leastSquares(points, piece, places);
  let worst = furthest(points, piece, { curve, places });
  for (let i = 0; i < TRIES && worst.away < NEAR * tolerance; i += 1) {
    const tried = places.map((place, k) => better(curve, points[first + k]!, place));
    const next = leastSquares(points, piece, tried);
    const off = furthest(points, piece, { curve: next, places: tried });
    if (off.away >= worst.away) break;
    [places, curve, worst] = [tried, next, off];
  }
  return worst.away > tolerance ? { curve, divide: worst.at } : { curve };
}

function isStraight(points: readonly Point[], { first, last }: Piece, tolerance: number): boolean {
  const chord = minus(points[last]!, points[first]!);
  const along = unit(chord);
  const most = Math.max(STRAIGHT.pixels, STRAIGHT.share * tolerance);
  for (let i = first + 1; i < last; i += 1) {
    const off = minus(points[i]!, points[first]!);
    const ahead = dot(off, along);
    if (ahead < -most || ahead > size(chord) + most) return false;
    if (Math.abs(off[0] * along[1] - off[1] * along[0]) > most) return false;
  }
  return true;
}

/** The way to each point as a share of all of it. */
function chordPlaces(points: readonly Point[], { first, last }: Piece): number[] {
  const places = [0];
  for (let i = first + 1; i <= last; i += 1) places.push(places.at(-1)! + size(minus(points[i]!, points[i - 1]!)));
  const all = places.at(-1)! || 1;
  return places.map((way) => way / all);
}

/** The lengths of both handles for which the sum of squared distances is least. */
function leastSquares(points: readonly Point[], { first, last, start, end }: Piece, places: readonly number[]): Curve {
  const [p0, p3] = [points[first]!, points[last]!];
  let [ss, se, ee, sd, ed] = [0, 0, 0, 0, 0];
  places.forEach((t, k) => {
    const [b0, b1, b2, b3] = weights(t);
    const [away, along] = [scaled(start, b1), scaled(end, b2)];
    const rest = minus(points[first + k]!, plus(scaled(p0, b0 + b1), scaled(p3, b2 + b3)));
    ss += dot(away, away);
    se += dot(away, along);
    ee += dot(along, along);
    sd += dot(away, rest);
    ed += dot(along, rest);
  });
  const chord = size(minus(p3, p0));
  const by = ss * ee - se * se;
  const lengths = [(sd * ee - ed * se) / by, (ss * ed - se * sd) / by] as const;
  // A handle that points backward, or is longer than the whole stretch (a point stands about every pixel), would make a loop.
  const sound = lengths.every((length) => length > 1e-6 * chord && length < places.length);
  if (!sound) return thirds(p0, p3, start, end);
  return [p0, plus(p0, scaled(start, lengths[0])), plus(p3, scaled(end, lengths[1])), p3];
}

interface Fitted {
  readonly curve: Curve;
  readonly places: readonly number[];
}

/** The inner point that is furthest from its place on the curve. */
function furthest(
  points: readonly Point[],
  { first, last }: Piece,
  { curve, places }: Fitted,
): { at: number; away: number } {
  let [at, away] = [Math.floor((first + last) / 2), 0];
  for (let i = first + 1; i < last; i += 1) {
    const off = size(minus(pointAt(curve, places[i - first]!), points[i]!));
    if (off > away) [at, away] = [i, off];
  }
  return { at, away };
}

/** Where the stretch heads at a point inside a piece, over as many points to both sides. */
function headingAt(points: readonly Point[], at: number, { first, last }: Piece): Point {
  const step = Math.min(ASIDE, at - first, last - at);
  const across = minus(points[at + step]!, points[at - step]!);
  return size(across) > 0 ? unit(across) : unit(minus(points[at]!, points[at - 1]!));
}
