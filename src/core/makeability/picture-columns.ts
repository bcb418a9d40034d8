import { oncePer } from "../kept-with.ts";
import type { Kit } from "../kit/kit.ts";
import type { Face } from "../pattern/face.ts";
import { type ColumnRun, readRuns } from "../picture/column.ts";
import type { LevelMap } from "../picture/level-map.ts";

/** An upright strip of the picture as it lies on the front, from the viewer's left. */
export interface PictureColumn {
  /** Middle of the strip from the picture's left edge, and its width, mm. */
  readonly across: number;
  readonly width: number;
  /** What the picture wants there: mm from the head. */
  readonly runs: readonly ColumnRun[];
}

/** A wide picture has a column a millimetre or so, and areas come out to some tenths of a per cent. */
const COLUMNS = 480;

/** The picture on the front in 480 strips of equal width. */
export function columnsOnFront(kit: Kit, face: Face): PictureColumn[] {
  const width = face.front.width / COLUMNS;
  const scale = face.solution.height / kit.picture.height;
  const columns = kit.fit.lostLeaves.length === 0 ? evenColumns(kit.picture) : closedColumns(kit, face, width);
  return columns.map((runs, i) => ({
    across: (i + 0.5) * width,
    width,
    runs: runs.map(({ from, to, level }) => ({ from: face.head + from * scale, to: face.head + to * scale, level })),
  }));
}

/** Area of each level as the picture lies on the front, mm². */
export function levelAreas(kit: Kit, columns: readonly PictureColumn[]): number[] {
  const areas = kit.levels.map(() => 0);
  for (const { width, runs } of columns) for (const run of runs) areas[run.level - 1]! += (run.to - run.from) * width;
  return areas;
}

/** The same for every book; a picture is read once. */
const evenColumns = oncePer((picture: LevelMap): readonly (readonly ColumnRun[])[] =>
  readRuns(
    picture,
    Array.from({ length: COLUMNS }, (_, i) => ((i + 0.5) / COLUMNS) * picture.width),
  ),
);

/** Where the picture closes over lost leaves, each leaf has a map of its own. */
function closedColumns(kit: Kit, face: Face, width: number): readonly (readonly ColumnRun[])[] {
  const { edges } = face.front;
  const ltr = kit.book.direction === "ltr";
  const xs = Array.from({ length: COLUMNS }, (_, i) => {
    const across = (i + 0.5) * width;
    const station = ltr ? across : face.front.width - across;
    const cell = edges.findIndex((edge) => edge > station) - 1;
    const fraction = face.faces[Math.max(0, cell)]!(station);
    return (ltr ? fraction : 1 - fraction) * kit.picture.width;
  });
  return readRuns(kit.picture, xs);
}
