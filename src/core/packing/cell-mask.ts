import { levelCrossings, stretchesOf } from "../geometry/crossings.ts";
import type { Point, Ring } from "../geometry/point.ts";

/** Cells of a square grid that a shape covers or touches: the runs of each row. */
export interface CellMask {
  readonly columns: number;
  readonly rows: readonly (readonly Run[])[];
}

/** Cells side by side. */
export interface Run {
  readonly from: number;
  /** The first after it. */
  readonly to: number;
}

/** Rounding of sums, in cells. */
const TOUCHING = 1e-6;

/**
 * The cells that a shape takes up, never one too few: those that a line runs through and those inside its outlines. Points are
 * in cells from the mask's corner.
 */
export function cellMask(
  rings: readonly Ring[],
  lines: readonly (readonly Point[])[],
  width: number,
  height: number,
): CellMask {
  const columns = Math.max(1, Math.ceil(width - TOUCHING));
  const rows = Array.from({ length: Math.max(1, Math.ceil(height - TOUCHING)) }, () => new Uint8Array(columns));
  const closed = rings.map((ring) => [...ring, ring[0]!]);
  for (const line of [...closed, ...lines])
    for (let i = 1; i < line.length; i += 1) coverSide(rows, columns, line[i - 1]!, line[i]!);
  for (const [y, row] of rows.entries())
    for (const { from, to } of stretchesOf(levelCrossings(rings, y + 0.5)))
      row.fill(1, Math.max(0, Math.floor(from)), Math.min(columns, Math.ceil(to)));
  return { columns, rows: rows.map(runsOf) };
}

function runsOf(row: Uint8Array): Run[] {
  const runs: { from: number; to: number }[] = [];
  for (let at = 0; at < row.length; at += 1) {
    if (row[at] === 0) continue;
    const last = runs.at(-1);
    if (last?.to === at) last.to += 1;
    else runs.push({ from: at, to: at + 1 });
  }
  return runs;
}

/** Covers every cell that a side runs through or along, band by band. */
function coverSide(rows: readonly Uint8Array[], columns: number, a: Point, b: Point): void {
  const [upper, lower] = a[1] <= b[1] ? [a, b] : [b, a];
  const first = cellOf(upper[1] - TOUCHING, rows.length);
  const last = cellOf(lower[1] + TOUCHING, rows.length);
  const across = (y: number): number =>
    lower[1] - upper[1] < TOUCHING
      ? upper[0]
      : upper[0] +
        ((Math.min(Math.max(y, upper[1]), lower[1]) - upper[1]) / (lower[1] - upper[1])) * (lower[0] - upper[0]);
  const isLevel = lower[1] - upper[1] < TOUCHING;
  for (let y = first; y <= last; y += 1) {
    const ends = isLevel ? [upper[0], lower[0]] : [across(y), across(y + 1)];
    const from = cellOf(Math.min(...ends) - TOUCHING, columns);
    const to = cellOf(Math.max(...ends) + TOUCHING, columns);
    rows[y]!.fill(1, from, to + 1);
  }
}

function cellOf(at: number, cells: number): number {
  return Math.min(cells - 1, Math.max(0, Math.floor(at)));
}
