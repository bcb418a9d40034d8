import type { Kit } from "../kit/kit.ts";
import type { Face } from "../pattern/face.ts";

/** An upright strip of the picture as it lies on the front, from the viewer's left. */
export interface PictureColumn {
  /** Middle of the strip from the picture's left edge, and its width, mm. */
  readonly across: number;
  readonly width: number;
  /** What the picture wants there: mm from the head. */
  readonly runs: readonly { readonly from: number; readonly to: number; readonly level: number }[];
}

const FEWEST = 400;
const MOST = 1200;

/** Strips of equal width over the whole picture, two for each picture leaf, but no fewer than 400 and no more than 1200. */
export function columnsOnFront(kit: Kit, face: Face): PictureColumn[] {
  const count = Math.min(MOST, Math.max(FEWEST, 2 * face.range.count));
  const width = face.front.width / count;
  const scale = face.solution.height / kit.picture.height;
  return Array.from({ length: count }, (_, i) => {
    const across = (i + 0.5) * width;
    const runs = face
      .read(columnAt(kit, face, across))
      .map(({ from, to, level }) => ({ from: face.head + from * scale, to: face.head + to * scale, level }));
    return { across, width, runs };
  });
}

/** Area of each level as the picture lies on the front, mm². */
export function levelAreas(kit: Kit, columns: readonly PictureColumn[]): number[] {
  const areas = kit.levels.map(() => 0);
  for (const { width, runs } of columns) for (const run of runs) areas[run.level - 1]! += (run.to - run.from) * width;
  return areas;
}

/** The picture's x (picture units) at a place of the front; after lost leaves the leaf there has a map of its own. */
function columnAt(kit: Kit, face: Face, across: number): number {
  const { edges, width } = face.front;
  const ltr = kit.book.direction === "ltr";
  const station = ltr ? across : width - across;
  const beyond = edges.findIndex((edge) => edge > station);
  const cell = Math.min(face.faces.length, Math.max(1, beyond < 0 ? face.faces.length : beyond)) - 1;
  const fraction = face.faces[cell]!(station);
  return (ltr ? fraction : 1 - fraction) * kit.picture.width;
}
