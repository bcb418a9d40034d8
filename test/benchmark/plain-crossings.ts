import { ClipType, FillRule, type PathsD, PathType } from "clipper2-ts/dist/Core.js";
import { ClipperD } from "clipper2-ts/dist/Engine.js";
import type { LevelMap } from "../../src/core/picture/level-map.ts";

/** One pass over all edges that notes where each meets upright lines at equal distances; gives how many crossings there are. */
export function onePass({ width, shapes }: LevelMap, lines: number): number {
  let room = new Float64Array(1024);
  let count = 0;
  for (const { rings } of shapes)
    for (const ring of rings) {
      let [ax, ay] = ring.at(-1)!;
      for (const [bx, by] of ring) {
        const [left, right] = ax < bx ? [ax, bx] : [bx, ax];
        const last = Math.ceil((right / width) * lines - 0.5);
        for (let line = Math.max(0, Math.ceil((left / width) * lines - 0.5)); line < last && line < lines; line += 1) {
          const x = ((line + 0.5) / lines) * width;
          if (count === room.length) {
            const more = new Float64Array(2 * count);
            more.set(room);
            room = more;
          }
          room[count] = ay + ((x - ax) / (bx - ax)) * (by - ay);
          count += 1;
        }
        [ax, ay] = [bx, by];
      }
    }
  return count;
}

/** Decimals that the project lets the polygon library keep. */
const PRECISION = 5;

/** The polygon library asked once for all lines: what of each lies inside the outlines. Gives the pieces' number. */
export function askLibrary({ width, height, shapes }: LevelMap, lines: number): number {
  const clipper = new ClipperD(PRECISION);
  const upright: PathsD = Array.from({ length: lines }, (_, line) => {
    const x = ((line + 0.5) / lines) * width;
    return [
      { x, y: 0 },
      { x, y: height },
    ];
  });
  clipper.addPaths(upright, PathType.Subject, true);
  const outlines = shapes.flatMap(({ rings }) => rings.map((ring) => ring.map(([x, y]) => ({ x, y }))));
  clipper.addPaths(outlines, PathType.Clip);
  const pieces: PathsD = [];
  clipper.execute(ClipType.Intersection, FillRule.EvenOdd, [], pieces);
  return pieces.length;
}
