import type { LevelShape } from "../../core/picture/level-map.ts";

/** Cells along the longer side of the grid that a picture is looked at through. */
const CELLS = 240;

/** What becomes of a shape when all are painted. */
export interface ShownShape {
  /** Share of the canvas where nothing covers it, 0…1. */
  readonly share: number;
  /** The shape under it where it lies wholly on shapes of its own level, and so makes no difference to a leaf. */
  readonly lostOn: number | undefined;
}

/** Paints shapes on a grid, in their order, and tells what each shows: to about 1 in 240 of the longer side. */
export function shownShapes(
  shapes: readonly LevelShape[],
  { width, height }: { readonly width: number; readonly height: number },
): ShownShape[] {
  const cell = Math.max(width, height) / CELLS;
  const columns = Math.max(1, Math.round(width / cell));
  const rows = Math.max(1, Math.round(height / cell));
  const [across, down] = [columns / width, rows / height];
  const top = new Int32Array(columns * rows).fill(-1);
  const lostOn = shapes.map(({ rings, rule, level }, shape): number | undefined => {
    let differs = false;
    let under: number | undefined;
    forCovered(rings, rule, { across, down, columns, rows }, (from, to) => {
      for (let at = from; at < to; at += 1) {
        const below = top[at]!;
        if (below < 0 || shapes[below]!.level !== level) differs = true;
        else under ??= below;
        top[at] = shape;
      }
    });
    return differs ? undefined : under;
  });
  const counts = new Uint32Array(shapes.length);
  for (const shape of top) if (shape >= 0) counts[shape]! += 1;
  return lostOn.map((under, i) => ({ share: counts[i]! / top.length, lostOn: under }));
}

interface Grid {
  readonly across: number;
  readonly down: number;
  readonly columns: number;
  readonly rows: number;
}

interface Crossing {
  readonly x: number;
  readonly winding: number;
}

/** Calls with the cells, from and to, whose middles lie inside outlines. */
function forCovered(
  rings: LevelShape["rings"],
  rule: LevelShape["rule"],
  { across, down, columns, rows }: Grid,
  paint: (from: number, to: number) => void,
): void {
  for (const [row, crossings] of crossingsByRow(rings, { across, down, columns, rows })) {
    crossings.sort((a, b) => a.x - b.x);
    let winding = 0;
    for (const [i, crossing] of crossings.entries()) {
      winding += crossing.winding;
      const inside = rule === "nonzero" ? winding !== 0 : i % 2 === 0;
      const next = crossings[i + 1];
      if (!inside || next === undefined) continue;
      const from = Math.max(0, Math.ceil(crossing.x * across - 0.5));
      const to = Math.min(columns, Math.ceil(next.x * across - 0.5));
      if (from < to) paint(row * columns + from, row * columns + to);
    }
  }
}

/** Where outlines cross the middle of each row of cells. */
function crossingsByRow(rings: LevelShape["rings"], { down, rows }: Grid): Map<number, Crossing[]> {
  const byRow = new Map<number, Crossing[]>();
  for (const ring of rings) {
    for (const [i, [ax, ay]] of ring.entries()) {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      const [from, to] = [Math.min(ay, by) * down, Math.max(ay, by) * down];
      const last = Math.min(rows, Math.ceil(to - 0.5));
      for (let row = Math.max(0, Math.ceil(from - 0.5)); row < last; row += 1) {
        const y = (row + 0.5) / down;
        const crossing = { x: ax + ((y - ay) / (by - ay)) * (bx - ax), winding: ay < by ? 1 : -1 };
        const crossings = byRow.get(row);
        if (crossings) crossings.push(crossing);
        else byRow.set(row, [crossing]);
      }
    }
  }
  return byRow;
}
