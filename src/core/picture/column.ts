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

/** Edges by number: each runs from x0 to x1 at its right, as typed columns. */
interface Edges {
  readonly count: number;
  readonly x0: Float64Array;
  readonly y0: Float64Array;
  readonly x1: Float64Array;
  readonly y1: Float64Array;
  /** +1 where the outline runs to the right, −1 to the left. */
  readonly winding: Int8Array;
  /** Which shape it bounds, from the lowest. */
  readonly shape: Int32Array;
}

/** The edges near each stretch of the picture's width: those of bucket b stand from `starts[b]` to `starts[b + 1]`, shape after shape. */
interface Buckets {
  readonly starts: Int32Array;
  readonly edges: Int32Array;
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

function columnReader({ width, height, background, shapes }: LevelMap): ColumnReader {
  const edges = edgesOf(shapes);
  const buckets = bucketsOf(edges, width);
  const covers = new Covers(height, background);
  return (x) => {
    if (x < 0 || x > width) return [{ from: 0, to: height, level: background }];
    covers.clear();
    const crossed: Crossing[] = [];
    const bucket = bucketOf(x, width);
    const end = buckets.starts[bucket + 1]!;
    for (let i = buckets.starts[bucket]!; i < end; i += 1) {
      const edge = buckets.edges[i]!;
      const [x0, x1] = [edges.x0[edge]!, edges.x1[edge]!];
      if (x >= x0 && x < x1) {
        const y0 = edges.y0[edge]!;
        crossed.push({ y: y0 + ((x - x0) / (x1 - x0)) * (edges.y1[edge]! - y0), winding: edges.winding[edge]! });
      }
      const shape = edges.shape[edge]!;
      if (i + 1 === end || edges.shape[buckets.edges[i + 1]!] !== shape) {
        coverInside(crossed, shapes[shape]!, covers);
        crossed.length = 0;
      }
    }
    return covers.uppermost();
  };
}

function bucketOf(x: number, width: number): number {
  return Math.max(0, Math.min(BUCKETS - 1, Math.floor((x / width) * BUCKETS)));
}

function edgesOf(shapes: readonly LevelShape[]): Edges {
  const most = shapes.reduce((sum, { rings }) => rings.reduce((edges, ring) => edges + ring.length, sum), 0);
  const [x0, y0, x1, y1] = [0, 0, 0, 0].map(() => new Float64Array(most)) as Coordinates;
  const [winding, shape] = [new Int8Array(most), new Int32Array(most)];
  let count = 0;
  for (const [number, { rings }] of shapes.entries())
    for (const ring of rings) {
      let [ax, ay] = ring.at(-1) ?? [0, 0];
      for (const [bx, by] of ring) {
        if (ax !== bx) {
          const right = ax < bx;
          x0[count] = right ? ax : bx;
          y0[count] = right ? ay : by;
          x1[count] = right ? bx : ax;
          y1[count] = right ? by : ay;
          winding[count] = right ? 1 : -1;
          shape[count] = number;
          count += 1;
        }
        ax = bx;
        ay = by;
      }
    }
  return { count, x0, y0, x1, y1, winding, shape };
}

type Coordinates = [Float64Array, Float64Array, Float64Array, Float64Array];

function bucketsOf({ count, x0, x1 }: Edges, width: number): Buckets {
  const starts = new Int32Array(BUCKETS + 1);
  const each = (visit: (edge: number, bucket: number) => void): void => {
    for (let edge = 0; edge < count; edge += 1) {
      if (x1[edge]! < 0 || x0[edge]! >= width) continue;
      const last = bucketOf(x1[edge]!, width);
      for (let bucket = bucketOf(x0[edge]!, width); bucket <= last; bucket += 1) visit(edge, bucket);
    }
  };
  each((_, bucket) => {
    starts[bucket + 1]! += 1;
  });
  for (let bucket = 0; bucket < BUCKETS; bucket += 1) starts[bucket + 1]! += starts[bucket]!;
  const edges = new Int32Array(starts[BUCKETS]!);
  const free = starts.slice();
  each((edge, bucket) => {
    edges[free[bucket]!] = edge;
    free[bucket]! += 1;
  });
  return { starts, edges };
}

/** Where a shape's outline meets the line. */
interface Crossing {
  readonly y: number;
  readonly winding: number;
}

/** Covers the line where it lies inside a shape, by the fill rule (SVG 2, painting, "Winding rule"). */
function coverInside(crossed: Crossing[], { rule, level }: LevelShape, covers: Covers): void {
  if (crossed.length > 2 || (crossed.length === 2 && crossed[0]!.y > crossed[1]!.y)) crossed.sort((a, b) => a.y - b.y);
  let winding = 0;
  let start = 0;
  crossed.forEach((crossing, i) => {
    const before = isInside(winding, i, rule);
    winding += crossing.winding;
    const after = isInside(winding, i + 1, rule);
    if (!before && after) start = crossing.y;
    if (before && !after) covers.add(start, crossing.y, level);
  });
}

function isInside(winding: number, crossed: number, rule: FillRule): boolean {
  return rule === "nonzero" ? winding !== 0 : crossed % 2 === 1;
}

/** Where shapes cover a line, the lowest first. */
class Covers {
  readonly #height: number;
  readonly #background: number;
  #ends: number[] = [];
  #levels: number[] = [];

  constructor(height: number, background: number) {
    this.#height = height;
    this.#background = background;
  }

  clear(): void {
    this.#ends = [];
    this.#levels = [];
  }

  /** Only what is in the picture counts. */
  add(from: number, to: number, level: number): void {
    const [top, foot] = [Math.max(0, from), Math.min(this.#height, to)];
    if (foot <= top) return;
    this.#ends.push(top, foot);
    this.#levels.push(level);
  }

  /** The level of the last cover at each place: their ends cut the line, and each cut is painted once, the last cover first. */
  uppermost(): ColumnRun[] {
    const cuts = Float64Array.from(this.#ends).sort();
    const painted = new Int32Array(cuts.length).fill(-1);
    // The next cut that is not painted, as far as it is known.
    const next = Int32Array.from({ length: cuts.length + 1 }, (_, place) => place);
    const free = (from: number): number => {
      let at = from;
      while (next[at] !== at) at = next[at] = next[next[at]!]!;
      return at;
    };
    for (let i = this.#levels.length - 1; i >= 0; i -= 1) {
      const end = placeOf(cuts, this.#ends[2 * i + 1]!);
      for (let at = free(placeOf(cuts, this.#ends[2 * i]!)); at < end; at = free(at)) {
        painted[at] = i;
        next[at] = at + 1;
      }
    }
    return this.#runs(cuts, painted);
  }

  #runs(cuts: Float64Array, painted: Int32Array): ColumnRun[] {
    const runs: { from: number; to: number; level: number }[] = [];
    let from = 0;
    for (let place = -1; place < cuts.length; place += 1) {
      const to = cuts[place + 1] ?? this.#height;
      if (to <= from) continue;
      const level = this.#levels[painted[place] ?? -1] ?? this.#background;
      const last = runs.at(-1);
      if (last?.level === level) last.to = to;
      else runs.push({ from, to, level });
      from = to;
    }
    return runs;
  }
}

/** The first place of an end among the cuts in order; between equal ones is nothing. */
function placeOf(cuts: Float64Array, end: number): number {
  let [low, high] = [0, cuts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (cuts[middle]! < end) low = middle + 1;
    else high = middle;
  }
  return low;
}
