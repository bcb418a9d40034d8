import { roomFor } from "../room-for.ts";
import { crossedSides } from "./crossed-sides.ts";
import type { LevelMap } from "./level-map.ts";
import { outlinesOf } from "./outlines.ts";
import { sweep } from "./sweep.ts";
import { keepUppermost } from "./uppermost.ts";

/** The levels along several upright lines: the runs of line i are those from `starts[i]` to `starts[i + 1]`, gapless from 0 to the picture's height. */
export interface Runs {
  readonly starts: Int32Array;
  /** Where each run ends, picture units from the top of the box. */
  readonly ends: Float64Array;
  readonly levels: Int32Array;
}

/** Prepares a picture for painting lines at x, given from the least: it goes down each and keeps the uppermost of the shapes that it is inside of. */
export function painterOf({ width, height, background, shapes }: LevelMap): (lines: Float64Array) => Runs {
  const outlines = outlinesOf(shapes);
  const windings = new Int32Array(shapes.length);
  // By the fill rule (SVG 2, painting, "Winding rule"): of even-odd the last bit counts, of nonzero all do.
  const counted = new Int32Array(shapes.map(({ rule }) => (rule === "evenodd" ? 1 : -1)));
  const levelOf = new Int32Array(shapes.map(({ level }) => level));
  const setInside = keepUppermost(shapes.length);
  return (lines) => {
    const sides = crossedSides(outlines, lines);
    const starts = new Int32Array(lines.length + 1);
    let [ends, levels] = roomFor(8 * lines.length + 1);
    let runs = 0;
    const note = (to: number, level: number): void => {
      if (runs === ends.length) [ends, levels] = roomFor(2 * runs, ends, levels);
      ends[runs] = to;
      levels[runs] = level;
      runs += 1;
    };
    sweep(sides, lines, (line, met, at, count) => {
      const isBeside = lines[line]! < 0 || lines[line]! > width;
      // A run is noted where the next one is of another level.
      let from = 0;
      let painted = background;
      let level = background;
      for (let i = 0; i < count && !isBeside; i += 1) {
        const to = Math.min(at[i]!, height);
        if (to > from) {
          if (level !== painted && from > 0) note(from, painted);
          painted = level;
          from = to;
        }
        const owner = sides.owners[met[i]!]!;
        const shape = owner >> 1;
        windings[shape]! += 2 * (owner & 1) - 1;
        const uppermost = setInside(shape, (windings[shape]! & counted[shape]!) !== 0);
        level = uppermost < 0 ? background : levelOf[uppermost]!;
      }
      if (height > from && painted !== background) note(from, painted);
      note(height, height > from ? background : painted);
      starts[line + 1] = runs;
    });
    return { starts, ends: ends.subarray(0, runs), levels: levels.subarray(0, runs) };
  };
}
