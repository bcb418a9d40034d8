import type { Stretch } from "../geometry/crossings.ts";
import type { Kit } from "../kit/kit.ts";
import { curveOfFace, type Face } from "../pattern/face.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { PictureColumn } from "./picture-columns.ts";
import { castRay, type Met } from "./ray.ts";
import { cellAt, type Standing, standLeaves } from "./standing.ts";
import { seenAt, type Viewer } from "./viewer.ts";

/** What becomes of a part of the picture. */
export type Fate = "kept" | "hidden" | "unreached" | "changed";

/** A level as the picture draws it and as the viewer sees it; areas in mm² on the front, together `wanted`. */
export interface LevelSeen {
  readonly level: number;
  readonly wanted: number;
  /** Seen where it is drawn. */
  readonly kept: number;
  /** The side of a prouder leaf stands before it. */
  readonly hidden: number;
  /** No folded edge of the level stands so far out. */
  readonly unreached: number;
  /** Another level is seen: rounded marks, merged strips, leaves between which it falls. */
  readonly changed: number;
  /** kept / wanted; 1 where nothing is wanted. */
  readonly share: number;
  /** Where it is hidden, mm from the fan's middle, negative to the left. */
  readonly hiddenAt: readonly Stretch[];
}

/** A part of the picture that is not seen as drawn; mm, x from the fan's middle, y from the head. */
export interface LostBox {
  readonly level: number;
  readonly fate: "hidden" | "unreached";
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The picture as it is seen through the fan. */
export interface SeenPicture {
  readonly levels: readonly LevelSeen[];
  readonly lost: readonly LostBox[];
}

/** Where less than this of a level is hidden is not told as a place: height in a column, and width, mm. */
const TOLD = 1;

/** Places nearer to each other than this are one, mm. */
const APART = 4;

/**
 * What each level keeps, seen from the front: a ray through the middle of each column. Undefined for a piece that is read
 * while walking round, which has no front.
 */
export function keptLevels(kit: Kit, { pattern, face, columns, viewer = "far" }: Looked): SeenPicture | undefined {
  if (kit.fit.view === "along") return undefined;
  const standing = standLeaves(pattern, viewer);
  const curve = curveOfFace(kit, face);
  const foremost = kit.book.leafWidth - kit.levels[0]!.depth;
  const sums = kit.levels.map(() => ({ kept: 0, hidden: 0, unreached: 0, changed: 0 }));
  const lost: LostBox[] = [];
  for (const { across, width, runs } of columns) {
    const place = curve.atAcross(across);
    const ray = seenAt(viewer, foremost, place);
    const reached = kit.levels.map((_, k) => isReached(standing, k + 1, ray, k + 1 === pattern.background));
    const met = castRay(standing, ray, runs[0]!.from, runs.at(-1)!.to);
    let first = 0;
    for (const run of runs) {
      while (first < met.length && met[first]!.to <= run.from) first += 1;
      for (let i = first; i < met.length && met[i]!.from < run.to; i += 1) {
        const seen = met[i]!;
        const top = Math.max(run.from, seen.from);
        const bottom = Math.min(run.to, seen.to);
        const fate = fateOf(run.level, seen.met, reached[run.level - 1]!);
        sums[run.level - 1]![fate] += (bottom - top) * width;
        if (fate === "hidden" || fate === "unreached")
          lost.push({ level: run.level, fate, left: place.x - width / 2, right: place.x + width / 2, top, bottom });
      }
    }
  }
  return { levels: sums.map((sum, k) => levelSeen(k + 1, sum, lost)), lost };
}

/** What is looked at, and from where. */
export interface Looked {
  readonly pattern: Pattern;
  readonly face: Face;
  readonly columns: readonly PictureColumn[];
  readonly viewer?: Viewer;
}

function fateOf(level: number, met: Met, reached: boolean): Fate {
  if (met === level) return "kept";
  if (!reached || met === "nothing") return "unreached";
  return met === "side" ? "hidden" : "changed";
}

/** Whether a leaf that may show a level stands there: picture leaves, for the background border leaves, too. */
function isReached({ rows, picture }: Standing, level: number, ray: number, background: boolean): boolean {
  const cell = cellAt(rows[level]!, ray);
  return background ? picture[cell] !== undefined : picture[cell] === true;
}

function levelSeen(level: number, sum: Readonly<Record<Fate, number>>, lost: readonly LostBox[]): LevelSeen {
  const wanted = sum.kept + sum.hidden + sum.unreached + sum.changed;
  const own = sum.hidden === 0 ? [] : lost.filter((box) => box.level === level && box.fate === "hidden");
  return { level, wanted, ...sum, share: wanted === 0 ? 1 : sum.kept / wanted, hiddenAt: placesOf(own) };
}

/** Joins columns of which enough is hidden. Boxes come from left to right. */
function placesOf(boxes: readonly LostBox[]): Stretch[] {
  const columns = new Map<number, { readonly right: number; readonly height: number }>();
  for (const { left, right, top, bottom } of boxes)
    columns.set(left, { right, height: (columns.get(left)?.height ?? 0) + bottom - top });
  const places: Stretch[] = [];
  for (const [left, { right, height }] of columns) {
    const last = places.at(-1);
    if (height < TOLD) continue;
    if (last && left - last.to < APART) places[places.length - 1] = { from: last.from, to: right };
    else places.push({ from: left, to: right });
  }
  return places.filter(({ from, to }) => to - from >= TOLD);
}
