import { distance, type Fan, leafTip } from "./fan.ts";

/** `front`: places are measured as seen from the front; `along`: as arc length along the front level's tips. */
export type Viewpoint = "front" | "along";

/** The picture leaves of a fan: `first` is 0-based, `count` ≥ 2. */
export interface LeafRange {
  readonly first: number;
  readonly count: number;
}

/**
 * The picture's face: where each picture leaf stands in it.
 * `stations` and `edges` run in book order as distances (mm) from the outer edge of the first picture leaf's cell,
 * whichever side of the viewer that is.
 */
export interface Front {
  /** Front level's tip of each picture leaf, increasing. */
  readonly stations: readonly number[];
  /** Cell edges, one more than leaves: midway between neighbours, the outermost half a pitch beyond. The first is 0. */
  readonly edges: readonly number[];
  /** Displayed width: last edge. */
  readonly width: number;
}

/** Lays the front level's cells out. A front needs at least two leaves. */
export function layFront(fan: Fan, range: LeafRange, frontDepth: number, view: Viewpoint): Front {
  const raw = view === "front" ? acrossPositions(fan, range, frontDepth) : arcPositions(fan, range, frontDepth);
  const last = raw.length - 1;
  const start = raw[0]! - (raw[1]! - raw[0]!) / 2;
  const edges = [0];
  for (let i = 0; i < last; i += 1) edges.push((raw[i]! + raw[i + 1]!) / 2 - start);
  edges.push(raw[last]! + (raw[last]! - raw[last - 1]!) / 2 - start);
  return { stations: raw.map((value) => value - start), edges, width: edges[last + 1]! };
}

/** The displayed width alone, as `layFront` gives it: seen from the front it follows from the two outer leaves at each end. */
export function frontWidth(fan: Fan, range: LeafRange, frontDepth: number, view: Viewpoint): number {
  if (view === "along") return layFront(fan, range, frontDepth, view).width;
  const at = (i: number): number => across(fan, range.first + i, frontDepth);
  const [first, second, beforeLast, last] = [at(0), at(1), at(range.count - 2), at(range.count - 1)];
  const start = first - (second - first) / 2;
  return last + (last - beforeLast) / 2 - start;
}

/** `frontWidth` of the first `count` leaves of a range, for every count from 2: walking along the fan it is measured once for all. */
export function frontWidths(
  fan: Fan,
  range: LeafRange,
  frontDepth: number,
  view: Viewpoint,
): (count: number) => number {
  const { first } = range;
  if (view === "front") return (count) => frontWidth(fan, { first, count }, frontDepth, view);
  const raw = arcPositions(fan, range, frontDepth);
  return (count) => raw[count - 1]! + (raw[1]! + raw[count - 1]! - raw[count - 2]!) / 2;
}

/** Where the tip of leaf j (0-based in the book) at `depth` is seen in the front, on the same scale as `stations`. */
export function stationAt(
  fan: Fan,
  range: LeafRange,
  front: Front,
  frontDepth: number,
  j: number,
  depth: number,
): number {
  const reference = across(fan, range.first, frontDepth) - front.stations[0]!;
  return across(fan, j, depth) - reference;
}

/** Straight distance between the first and last picture leaf's front tips, where the picture lies: no ruler reaches both. */
export function tipWidth(fan: Fan, range: LeafRange, frontDepth: number): number {
  return distance(leafTip(fan, range.first, frontDepth), leafTip(fan, range.first + range.count - 1, frontDepth));
}

/** Straight distance between the folded edges of two leaves (0-based), each at its own depth: what a ruler meets there. */
export function holdWidth(fan: Fan, first: number, firstDepth: number, last: number, lastDepth: number): number {
  return distance(leafTip(fan, first, firstDepth), leafTip(fan, last, lastDepth));
}

/** Distance between the fore-edges of the boards: T' + 2(W + square)·sin(Φ/2), T' the block with both boards. */
export function boardWidth(fan: Fan, square: number, boardThickness: number): number {
  return fan.blockThickness + 2 * boardThickness + 2 * (fan.leafWidth + square) * Math.sin(fan.opening / 2);
}

function acrossPositions(fan: Fan, range: LeafRange, depth: number): number[] {
  return Array.from({ length: range.count }, (_, i) => across(fan, range.first + i, depth));
}

/** x counted in book order: it grows from the first leaf to the last in both reading directions. */
function across(fan: Fan, j: number, depth: number): number {
  const x = leafTip(fan, j, depth).x;
  return fan.direction === "ltr" ? x : -x;
}

function arcPositions(fan: Fan, range: LeafRange, depth: number): number[] {
  const positions = [0];
  for (let i = 1; i < range.count; i += 1) {
    const step = distance(leafTip(fan, range.first + i - 1, depth), leafTip(fan, range.first + i, depth));
    positions.push(positions[i - 1]! + step);
  }
  return positions;
}
