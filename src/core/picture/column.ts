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

interface IndexedShape {
  readonly level: number;
  readonly rule: FillRule;
  readonly buckets: readonly (readonly Edge[])[];
}

const BUCKETS = 256;

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
  const shapes = map.shapes.map((shape) => indexShape(shape, map.width));
  return (x) => {
    let runs: ColumnRun[] = [{ from: 0, to: map.height, level: map.background }];
    if (x < 0 || x > map.width) return runs;
    const bucket = Math.min(BUCKETS - 1, Math.floor((x / map.width) * BUCKETS));
    for (const shape of shapes) {
      for (const [from, to] of insideRuns(shape.buckets[bucket]!, shape.rule, x)) {
        runs = layOver(runs, Math.max(0, from), Math.min(map.height, to), shape.level);
      }
    }
    return runs;
  };
}

function indexShape(shape: LevelShape, width: number): IndexedShape {
  const buckets: Edge[][] = Array.from({ length: BUCKETS }, () => []);
  for (const ring of shape.rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      if (ax === bx) return;
      const edge: Edge =
        ax < bx ? { x0: ax, y0: ay, x1: bx, y1: by, winding: 1 } : { x0: bx, y0: by, x1: ax, y1: ay, winding: -1 };
      const first = Math.max(0, Math.floor((edge.x0 / width) * BUCKETS));
      const last = Math.min(BUCKETS - 1, Math.floor((edge.x1 / width) * BUCKETS));
      for (let bucket = first; bucket <= last; bucket += 1) buckets[bucket]!.push(edge);
    });
  }
  return { level: shape.level, rule: shape.rule, buckets };
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

function layOver(runs: readonly ColumnRun[], from: number, to: number, level: number): ColumnRun[] {
  if (to <= from) return [...runs];
  const laid: ColumnRun[] = [];
  const push = (run: ColumnRun): void => {
    const last = laid.at(-1);
    if (run.to <= run.from) return;
    if (last && last.level === run.level) laid[laid.length - 1] = { ...last, to: run.to };
    else laid.push(run);
  };
  let placed = false;
  for (const run of runs) {
    push({ ...run, to: Math.min(run.to, from) });
    if (!placed && run.to > from) {
      push({ from, to, level });
      placed = true;
    }
    push({ ...run, from: Math.max(run.from, to) });
  }
  return laid;
}
