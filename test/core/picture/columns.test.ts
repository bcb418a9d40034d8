import { describe, expect, it } from "vitest";
import { type ColumnRun, readRuns } from "../../../src/core/picture/column.ts";
import { levelExtents } from "../../../src/core/picture/level-extents.ts";
import type { LevelMap, LevelShape } from "../../../src/core/picture/level-map.ts";
import { fc } from "../../seed.ts";
import { sidesOf } from "../geometry/plane.ts";
import { anyLines, anyPicture } from "./any-picture.ts";

interface Crossing {
  readonly y: number;
  readonly turn: number;
}

/** Where an outline is met by the upright line at x; a side has its left end, not its right one. */
function crossingsOf({ rings }: LevelShape, x: number): Crossing[] {
  return rings.flatMap(sidesOf).flatMap(([a, b]) => {
    const [left, right] = a[0] < b[0] ? [a, b] : [b, a];
    if (left[0] > x || right[0] <= x) return [];
    const y = left[1] + ((x - left[0]) / (right[0] - left[0])) * (right[1] - left[1]);
    return [{ y, turn: a[0] < b[0] ? 1 : -1 }];
  });
}

/** Whether just below y the line is inside a shape: by all that it meets above. */
function isInside({ rule }: LevelShape, crossings: readonly Crossing[], y: number): boolean {
  const above = crossings.filter((crossing) => crossing.y <= y);
  const winding = above.reduce((sum, { turn }) => sum + turn, 0);
  return rule === "nonzero" ? winding !== 0 : above.length % 2 === 1;
}

/** The plain way: the line is cut wherever it meets anything, and for each cut all shapes are asked, the uppermost first. */
function plainColumn({ width, height, background, shapes }: LevelMap, x: number): ColumnRun[] {
  const met = shapes.map((shape) => ({ shape, crossings: x < 0 || x > width ? [] : crossingsOf(shape, x) })).reverse();
  const inBox = met.flatMap(({ crossings }) => crossings.map(({ y }) => y)).filter((y) => y > 0 && y < height);
  const cuts = [...new Set([0, ...inBox])].sort((a, b) => a - b);
  const runs: { from: number; to: number; level: number }[] = [];
  for (const [i, from] of cuts.entries()) {
    const to = cuts[i + 1] ?? height;
    const level = met.find(({ shape, crossings }) => isInside(shape, crossings, from))?.shape.level ?? background;
    const last = runs.at(-1);
    if (last?.level === level) last.to = to;
    else runs.push({ from, to, level });
  }
  return runs;
}

describe("readRuns(map, x) of any picture", () => {
  it("is what a plain way reads line by line, to the last bit", () => {
    fc.assert(
      fc.property(anyPicture, anyLines, (map, lines) => {
        expect(readRuns(map, lines)).toEqual(lines.map((x) => plainColumn(map, x)));
      }),
      { numRuns: 400 },
    );
  });

  it("does not depend on which lines are read together, nor on what was read before", () => {
    fc.assert(
      fc.property(anyPicture, anyLines, (map, lines) => {
        const together = readRuns(map, lines);
        expect(lines.flatMap((x) => readRuns(map, [x]))).toEqual(together);
        expect(readRuns({ ...map }, lines.toReversed()).reverse()).toEqual(together);
      }),
      { numRuns: 100 },
    );
  });
});

describe("levelExtents(map) of any picture", () => {
  it("is the first and the last of 512 samples that shows a level", () => {
    const samples = Array.from({ length: 512 }, (_, i) => (i + 0.5) / 512);
    fc.assert(
      fc.property(anyPicture, (map) => {
        const columns = readRuns(
          map,
          samples.map((fraction) => fraction * map.width),
        );
        const shows = (level: number) => (column: ColumnRun[]) => column.some((run) => run.level === level);
        for (const level of [1, 2, 3, 4, 5]) {
          const first = samples[columns.findIndex(shows(level))];
          const extent = first === undefined ? undefined : [first, samples[columns.findLastIndex(shows(level))]];
          expect(levelExtents(map)[level - 1]).toEqual(extent);
        }
      }),
      { numRuns: 100 },
    );
  });
});
