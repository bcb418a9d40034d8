import { lastPer, oncePer } from "../kept-with.ts";
import { type Columns, columnsAt } from "../picture/column.ts";
import type { LevelMap } from "../picture/level-map.ts";
import { tidy } from "../units/length.ts";

/** A stretch of one height at which a level stands, mm from the picture's left edge as the viewer sees it. */
export interface RegionRun {
  readonly from: number;
  readonly to: number;
}

/** Where a picture lies on the book's front. */
export interface PictureBox {
  readonly head: number;
  readonly height: number;
  readonly width: number;
}

/** A box without what is lost in computing its figures: a solved opening gives the same width again only nearly. */
export function tidyBox({ head, height, width }: PictureBox): PictureBox {
  return { head: tidy(head), height: tidy(height), width: tidy(width) };
}

/** Rows are mostly asked for one after the other, each so many mm above the last one. */
export const ROW_STEP = 0.1;

/** So many are read at once then. */
const ROWS = 64;

/** The widest stretch of a level at a height (mm from the head), or nothing where the level does not stand there; `others` may be asked for next. */
export type RegionRows = (height: number, others?: readonly number[]) => RegionRun | undefined;

const lastRows = lastPer<LevelMap, RegionRows>(1);

/** Rows are columns of the picture turned on its side; each is read once, for all lights while the picture stays in its place. */
export function regionRows(map: LevelMap, level: number, front: PictureBox): RegionRows {
  const box = tidyBox(front);
  return lastRows(map, JSON.stringify([level, box]), () => readRows(map, level, box));
}

function readRows(map: LevelMap, level: number, box: PictureBox): RegionRows {
  const known = new Map<number, RegionRun | undefined>();
  const scale = box.width / map.width;
  const read = (heights: readonly number[]): void => {
    const ys = heights.map((height) => ((height - box.head) / box.height) * map.height);
    const columns = columnsAt(turned(map), ys);
    for (const [i, y] of ys.entries()) {
      const widest = y < 0 || y > map.height ? undefined : widestRun(columns, columns.at(y), level);
      known.set(heights[i]!, widest && { from: widest.from * scale, to: widest.to * scale });
    }
  };
  let next = Number.NaN;
  return (height, others = []) => {
    const found = known.get(height);
    if (!found && !known.has(height)) {
      const heights = [height, ...others];
      if (height === next) while (heights.length < ROWS) heights.push(heights.at(-1)! - ROW_STEP);
      read(heights);
      if (others.length === 0) next = heights.at(-1)! - ROW_STEP;
      return known.get(height);
    }
    return found;
  };
}

/** The widest run of a level in a column, the first among equals. */
function widestRun({ starts, ends, levels }: Columns, column: number, level: number): RegionRun | undefined {
  let widest: RegionRun | undefined;
  for (let i = starts[column]!; i < starts[column + 1]!; i += 1) {
    const from = i === starts[column] ? 0 : ends[i - 1]!;
    const to = ends[i]!;
    if (levels[i] === level && !(widest && widest.to - widest.from >= to - from)) widest = { from, to };
  }
  return widest;
}

/** A picture turned on its side: its columns are the rows of the picture, from the left. A picture is turned once. */
export const turned = oncePer(
  (map: LevelMap): LevelMap => ({
    ...map,
    width: map.height,
    height: map.width,
    shapes: map.shapes.map((shape) => ({
      ...shape,
      rings: shape.rings.map((ring) => ring.map(([x, y]) => [y, x] as const)),
    })),
  }),
);
