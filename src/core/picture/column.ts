import type { FillRule } from "../geometry/point.ts";
import type { LevelMap, LevelShape } from "./level-map.ts";

/** A stretch of one vertical line through the picture, in picture units from the top of the box. */
export interface ColumnRun {
  readonly from: number;
  readonly to: number;
  readonly level: number;
}

/** Reads the levels along the vertical line at x: runs in order, gapless from 0 to the picture's height. */
export type ColumnReader = (x: number) => ColumnRun[];

interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  /** +1 where the outline runs to the right, −1 to the left. */
  readonly winding: 1 | -1;
}

/** The edges of a shape near a line. */
interface NearShape {
  readonly level: number;
  readonly rule: FillRule;
  readonly edges: Edge[];
}

/** Where a shape covers the line. */
interface Cover {
  readonly from: number;
  readonly to: number;
  readonly level: number;
}

const BUCKETS = 1024;

const prepared = new WeakMap<LevelMap, ColumnReader>();

/**
 * Prepares a picture for reading columns; a picture is prepared once, however often it is fitted. The line meets the outlines exactly (no pixels); a column that touches a vertex
 * counts the edge that starts there and not the one that ends (half-open), so it reads the picture just right of the line.
 * Left and right of the box there is only background.
 */
export function readColumns(map: LevelMap): ColumnReader {
  const known = prepared.get(map);
  if (known) return known;
  const reader = columnReader(map);
  prepared.set(map, reader);
  return reader;
}

function columnReader(map: LevelMap): ColumnReader {
  const buckets: NearShape[][] = Array.from({ length: BUCKETS }, () => []);
  for (const shape of map.shapes) indexShape(shape, map.width, buckets);
  return (x) => {
    if (x < 0 || x > map.width) return [{ from: 0, to: map.height, level: map.background }];
    const covers: Cover[] = [];
    for (const { level, rule, edges } of buckets[Math.min(BUCKETS - 1, bucketOf(x, map.width))]!) {
      for (const [from, to] of insideRuns(edges, rule, x)) {
        const cover = { from: Math.max(0, from), to: Math.min(map.height, to), level };
        if (cover.to > cover.from) covers.push(cover);
      }
    }
    return uppermost(covers, map);
  };
}

function bucketOf(x: number, width: number): number {
  return Math.floor((x / width) * BUCKETS);
}

function indexShape({ level, rule, rings }: LevelShape, width: number, buckets: readonly NearShape[][]): void {
  const own = new Map<number, Edge[]>();
  for (const ring of rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      if (ax === bx) return;
      const edge: Edge =
        ax < bx ? { x0: ax, y0: ay, x1: bx, y1: by, winding: 1 } : { x0: bx, y0: by, x1: ax, y1: ay, winding: -1 };
      const first = Math.max(0, bucketOf(edge.x0, width));
      const last = Math.min(BUCKETS - 1, bucketOf(edge.x1, width));
      for (let bucket = first; bucket <= last; bucket += 1) {
        const edges = own.get(bucket);
        if (edges) edges.push(edge);
        else own.set(bucket, [edge]);
      }
    });
  }
  for (const [bucket, edges] of own) buckets[bucket]!.push({ level, rule, edges });
}

/** Where the line lies inside, by the fill rule (SVG 2, painting, "Winding rule"). */
function insideRuns(edges: readonly Edge[], rule: FillRule, x: number): [number, number][] {
  const crossings: { y: number; winding: number }[] = [];
  for (const edge of edges) {
    if (x < edge.x0 || x >= edge.x1) continue;
    const y = edge.y0 + ((x - edge.x0) / (edge.x1 - edge.x0)) * (edge.y1 - edge.y0);
    crossings.push({ y, winding: edge.winding });
  }
  crossings.sort((a, b) => a.y - b.y);
  const runs: [number, number][] = [];
  let winding = 0;
  let start = 0;
  crossings.forEach((crossing, i) => {
    const before = isInside(winding, i, rule);
    winding += crossing.winding;
    const after = isInside(winding, i + 1, rule);
    if (!before && after) start = crossing.y;
    if (before && !after) runs.push([start, crossing.y]);
  });
  return runs;
}

function isInside(winding: number, crossed: number, rule: FillRule): boolean {
  return rule === "nonzero" ? winding !== 0 : crossed % 2 === 1;
}

/** The level of the last of the covers at each place: their ends cut the line, and each cut is painted once, the last cover first. */
function uppermost(covers: readonly Cover[], { height, background }: LevelMap): ColumnRun[] {
  const ends = covers.flatMap(({ from, to }) => [from, to]);
  const order = ends.map((_, end) => end).sort((a, b) => ends[a]! - ends[b]!);
  const placeOf: number[] = [];
  for (const [place, end] of order.entries()) placeOf[end] = place;
  const levels: (number | undefined)[] = [];
  // The next cut that is not painted, as far as it is known.
  const next = order.map((_, place) => place);
  const free = (from: number): number => {
    let at = from;
    while (next[at] !== at) at = next[at] = next[next[at]!]!;
    return at;
  };
  for (let i = covers.length - 1; i >= 0; i -= 1) {
    const end = placeOf[2 * i + 1]!;
    for (let at = free(placeOf[2 * i]!); at < end; at = free(at)) {
      levels[at] = covers[i]!.level;
      next[at] = at + 1;
    }
  }
  const runs: ColumnRun[] = [];
  let from = 0;
  const run = (to: number, level: number): void => {
    const last = runs.at(-1);
    if (to <= from) return;
    if (last?.level === level) runs[runs.length - 1] = { ...last, to };
    else runs.push({ from, to, level });
    from = to;
  };
  const endAt = (place: number): number => (place < order.length ? ends[order[place]!]! : height);
  run(endAt(0), background);
  for (const place of order.keys()) run(endAt(place + 1), levels[place] ?? background);
  return runs;
}
