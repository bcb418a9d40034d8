import { oncePer } from "../kept-with.ts";
import { firstFrom } from "./crossed-sides.ts";
import type { LevelMap } from "./level-map.ts";
import { painterOf, type Runs } from "./paint.ts";

/** A stretch of one vertical line through the picture, in picture units from the top of the box. */
export interface ColumnRun {
  readonly from: number;
  readonly to: number;
  readonly level: number;
}

/** The levels along several vertical lines. */
export interface Columns extends Runs {
  /** The number of the column at an x that was asked for. */
  readonly at: (x: number) => number;
}

const prepared = oncePer(painterOf);

/**
 * Reads a picture along several vertical lines at once, in any order. The lines meet the outlines exactly (no pixels); a
 * column that touches a vertex counts the edge that starts there and not the one that ends (half-open), so it reads the
 * picture just right of the line. Left and right of the box there is only background. A picture is prepared once, however
 * often it is read.
 */
export function columnsAt(map: LevelMap, x: readonly number[]): Columns {
  const lines = new Float64Array(x).sort();
  return { ...prepared(map)(lines), at: (one) => firstFrom(lines, one) };
}

/** The runs along the vertical line at each x as records: in order, gapless from 0 to the picture's height. */
export function readRuns(map: LevelMap, x: readonly number[]): ColumnRun[][] {
  const { starts, ends, levels, at } = columnsAt(map, x);
  return x.map((one) => {
    const first = starts[at(one)]!;
    return Array.from({ length: starts[at(one) + 1]! - first }, (_, i) => ({
      from: i === 0 ? 0 : ends[first + i - 1]!,
      to: ends[first + i]!,
      level: levels[first + i]!,
    }));
  });
}
