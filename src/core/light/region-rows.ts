import { type ColumnReader, readColumns } from "../picture/column.ts";
import type { LevelMap } from "../picture/level-map.ts";

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

/** The widest stretch of a level at a height (mm from the head), or nothing where the level does not stand there. */
export type RegionRows = (height: number) => RegionRun | undefined;

const turnedMaps = new WeakMap<LevelMap, LevelMap>();

const lastRows = new WeakMap<LevelMap, { readonly place: string; readonly rows: RegionRows }>();

/** Rows are columns of the picture turned on its side; each is read once, for all lights while the picture stays in its place. */
export function regionRows(map: LevelMap, level: number, box: PictureBox): RegionRows {
  const place = JSON.stringify([level, box]);
  const last = lastRows.get(map);
  if (last?.place === place) return last.rows;
  const rows = readRows(map, level, box);
  lastRows.set(map, { place, rows });
  return rows;
}

function readRows(map: LevelMap, level: number, box: PictureBox): RegionRows {
  const read: ColumnReader = readColumns(turned(map));
  const known = new Map<number, RegionRun | undefined>();
  const rowAt = (height: number): RegionRun | undefined => {
    const y = ((height - box.head) / box.height) * map.height;
    if (y < 0 || y > map.height) return undefined;
    const scale = box.width / map.width;
    const runs = read(y).filter((run) => run.level === level);
    const widest = runs.reduce<RegionRun | undefined>(
      (best, run) => (best && best.to - best.from >= run.to - run.from ? best : run),
      undefined,
    );
    return widest && { from: widest.from * scale, to: widest.to * scale };
  };
  return (height) => {
    if (!known.has(height)) known.set(height, rowAt(height));
    return known.get(height);
  };
}

/** A picture turned on its side: its columns are the rows of the picture, from the left. A picture is turned once. */
export function turned(map: LevelMap): LevelMap {
  const known = turnedMaps.get(map);
  if (known) return known;
  const made = {
    ...map,
    width: map.height,
    height: map.width,
    shapes: map.shapes.map((shape) => ({
      ...shape,
      rings: shape.rings.map((ring) => ring.map(([x, y]) => [y, x] as const)),
    })),
  };
  turnedMaps.set(map, made);
  return made;
}
