import { oncePer } from "../kept-with.ts";
import type { Kit } from "../kit/kit.ts";
import { turned } from "../light/region-rows.ts";
import type { Face } from "../pattern/face.ts";
import { type ColumnRun, readRuns } from "../picture/column.ts";
import type { LevelMap } from "../picture/level-map.ts";
import type { PicturePlace } from "./picture-place.ts";
import { tipsOnPicture, tipsWithin } from "./tips-on-picture.ts";

/** A part of the picture that fewer than two leaves show; mm, x from the fan's middle, y from the head. */
export interface NarrowDetail {
  readonly level: number;
  /** Leaves that show it: 0 or 1. */
  readonly leaves: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A part as it grows row by row; x in picture units. */
interface Growing {
  readonly level: number;
  leaves: number;
  left: number;
  right: number;
  /** Greatest width of a row. */
  width: number;
  readonly top: number;
  bottom: number;
  /** Whether it is the end of something wider. */
  attached: boolean;
}

interface RowRun {
  readonly from: number;
  readonly to: number;
  readonly level: number;
  /** The narrow part that it belongs to; undefined where two leaves or more show the run. */
  part: Growing | undefined;
}

/** So many rows of a picture are read, a millimetre apart or less in most books. */
const ROWS = 400;

/** The end of something wider is told where it is this many times as tall as wide: every round shape ends narrow. */
const SLENDER = 3;

/** A part by itself is told from this height on, mm. */
const SPECK = 1;

/** Parts of the picture so narrow that fewer than two folded edges of their level fall into them, the tallest first. */
export function narrowDetails(kit: Kit, face: Face, place: PicturePlace): NarrowDetail[] {
  const step = kit.picture.height / ROWS;
  const tips = tipsOnPicture(kit, face);
  const parts: Growing[] = [];
  let above: RowRun[] = [];
  for (const [row, levels] of rowsOf(kit.picture).entries()) {
    const runs = levels.map(({ from, to, level }): RowRun => ({ from, to, level, part: undefined }));
    for (const run of runs) {
      const leaves = tipsWithin(tips[run.level - 1]!, run.from, run.to);
      if (leaves >= 2 || isMargin(kit, run)) continue;
      const shape = {
        level: run.level,
        leaves,
        left: run.from,
        right: run.to,
        width: run.to - run.from,
        top: row * step,
      };
      run.part = { ...shape, bottom: (row + 1) * step, attached: false };
    }
    parts.push(...joinRows(above, runs));
    above = runs;
  }
  const scale = face.solution.height / kit.picture.height;
  const xOf = (at: number): number => place.left + (at / kit.picture.width) * place.width;
  return parts
    .filter((part) => isTold(part, scale, kit.fit.leastTab))
    .map(({ level, leaves, left, right, top, bottom }) => ({
      level,
      leaves,
      left: xOf(left),
      right: xOf(right),
      top: face.head + top * scale,
      bottom: face.head + bottom * scale,
    }))
    .toSorted((a, b) => b.bottom - b.top - (a.bottom - a.top));
}

/** From the top; a picture is read once. */
const rowsOf = oncePer((picture: LevelMap): readonly (readonly ColumnRun[])[] => {
  const heights = Array.from({ length: ROWS }, (_, i) => ((i + 0.5) / ROWS) * picture.height);
  return readRuns(turned(picture), heights);
});

/** Goes on with the parts of the row above where runs of a level touch, and gives the parts that begin. */
function joinRows(above: readonly RowRun[], runs: readonly RowRun[]): Growing[] {
  const begun: Growing[] = [];
  let first = 0;
  for (const run of runs) {
    const own = run.part;
    let grown: Growing | undefined;
    while (first < above.length && above[first]!.to <= run.from) first += 1;
    for (let i = first; i < above.length && above[i]!.from < run.to; i += 1) {
      const over = above[i]!;
      if (over.level !== run.level) continue;
      if (!own && over.part) over.part.attached = true;
      if (own && !over.part) own.attached = true;
      if (own && over.part) grown ??= over.part;
    }
    if (!own) continue;
    if (!grown) begun.push(own);
    else run.part = grow(grown, own);
  }
  return begun;
}

function grow(part: Growing, by: Growing): Growing {
  part.leaves = Math.max(part.leaves, by.leaves);
  part.left = Math.min(part.left, by.left);
  part.right = Math.max(part.right, by.right);
  part.width = Math.max(part.width, by.width);
  part.bottom = by.bottom;
  part.attached ||= by.attached;
  return part;
}

/** The background goes on beyond the picture's sides. */
function isMargin({ picture }: Kit, { from, to, level }: RowRun): boolean {
  return level === picture.background && (from <= 0 || to >= picture.width);
}

function isTold({ top, bottom, width, attached }: Growing, scale: number, leastTab: number): boolean {
  const height = (bottom - top) * scale;
  return attached ? height >= Math.max(leastTab, SLENDER * width * scale) : height >= SPECK;
}
