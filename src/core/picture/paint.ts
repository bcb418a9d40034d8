import { crossedSides } from "./crossed-sides.ts";
import type { LevelMap } from "./level-map.ts";
import { outlinesOf } from "./outlines.ts";
import { RunList, type Runs } from "./runs.ts";
import { sweep } from "./sweep.ts";
import { Uppermost } from "./uppermost.ts";

/** Prepares a picture for painting lines at x, given from the least: it goes down each and keeps the uppermost of the shapes that it is inside of. */
export function painterOf({ width, height, background, shapes }: LevelMap): (lines: Float64Array) => Runs {
  const outlines = outlinesOf(shapes);
  const levels = Int32Array.from(shapes, ({ level }) => level);
  // Of a shape's winding number, the bits that tell inside from outside (SVG 2, painting, "Winding rule").
  const counted = Int32Array.from(shapes, ({ rule }) => (rule === "evenodd" ? 1 : -1));
  const windings = new Int32Array(shapes.length);
  const inside = new Uppermost(shapes.length);
  const pass = (owner: number): void => {
    const shape = owner >> 1;
    const winding = windings[shape]! + 2 * (owner & 1) - 1;
    windings[shape] = winding;
    if ((winding & counted[shape]!) === 0) inside.remove(shape);
    else inside.add(shape);
  };
  return (lines) => {
    const sides = crossedSides(outlines, lines);
    const runs = new RunList(lines.length);
    sweep(sides, lines, (line, count, at, met) => {
      const isBeside = lines[line]! < 0 || lines[line]! > width;
      let from = 0;
      for (let i = 0; i < count && !isBeside; i += 1) {
        const to = Math.min(at[i]!, height);
        if (to > from) {
          const shape = inside.greatest;
          runs.add(to, shape < 0 ? background : levels[shape]!);
          from = to;
        }
        pass(sides.owners[met[i]!]!);
      }
      if (height > from) runs.add(height, background);
      runs.endLine();
    });
    return runs;
  };
}
