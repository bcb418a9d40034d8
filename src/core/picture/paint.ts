import { crossedSides } from "./crossed-sides.ts";
import type { LevelMap } from "./level-map.ts";
import { outlinesOf } from "./outlines.ts";
import { sweep } from "./sweep.ts";
import { Uppermost } from "./uppermost.ts";

/** The levels along several upright lines: the runs of line i are those from `starts[i]` to `starts[i + 1]`, gapless from 0 to the picture's height. */
export interface Runs {
  readonly starts: readonly number[];
  /** Where each run ends, picture units from the top of the box. */
  readonly ends: readonly number[];
  readonly levels: readonly number[];
}

/** Prepares a picture for painting lines at x, given from the least: it goes down each and keeps the uppermost of the shapes that it is inside of. */
export function painterOf({ width, height, background, shapes }: LevelMap): (lines: Float64Array) => Runs {
  const outlines = outlinesOf(shapes);
  const windings = new Int32Array(shapes.length);
  const inside = new Uppermost(shapes.length);
  // By the fill rule (SVG 2, painting, "Winding rule").
  const pass = (owner: number): void => {
    const shape = owner >> 1;
    windings[shape]! += 2 * (owner & 1) - 1;
    const counted = shapes[shape]!.rule === "evenodd" ? windings[shape]! & 1 : windings[shape]!;
    inside.set(shape, counted !== 0);
  };
  return (lines) => {
    const sides = crossedSides(outlines, lines);
    const [starts, ends, levels]: [number[], number[], number[]] = [[0], [], []];
    const paint = (to: number, level: number): void => {
      const last = ends.length - 1;
      if (last >= starts[starts.length - 1]! && levels[last] === level) ends[last] = to;
      else {
        ends.push(to);
        levels.push(level);
      }
    };
    sweep(sides, lines, (line, met, at) => {
      const isBeside = lines[line]! < 0 || lines[line]! > width;
      let from = 0;
      for (let i = 0; i < met.length && !isBeside; i += 1) {
        const to = Math.min(at[met[i]!]!, height);
        if (to > from) {
          paint(to, shapes[inside.greatest]?.level ?? background);
          from = to;
        }
        pass(sides.owners[met[i]!]!);
      }
      if (height > from) paint(height, background);
      starts.push(ends.length);
    });
    return { starts, ends, levels };
  };
}
