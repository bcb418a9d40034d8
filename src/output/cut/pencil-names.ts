import { type Box, boxOf, type Size } from "../../core/geometry/box.ts";
import { levelCrossings, stretchesOf } from "../../core/geometry/crossings.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import type { SheetSize } from "../../core/kit/kit.ts";
import type { LaidSheet } from "../../core/packing/lay-out.ts";
import { drawnLine, type ToolPath } from "../../core/packing/operation.ts";
import { sheetPaths } from "../../core/packing/sheet-paths.ts";
import type { Part } from "../../core/window/part.ts";
import { type WordsSpot, wordsSpot } from "../drawing/class/words-spot.ts";
import { inStrokes, strokesOf, strokesWidth } from "./stroke-letters.ts";

/** Heights of letters, mm: the largest that a part has room for, and those beside a part that has none. */
const HEIGHTS = [6, 4, 3] as const;
const BESIDE = [3, 2.5] as const;

/** Free room round words, and how far from its part a name may stand, mm. */
const FREE = 1;
const NEAR = 30;

/** What is named: the part's outlines where they are cut. */
interface Named {
  readonly outlines: readonly Ring[];
  /** The first that has room. */
  readonly names: readonly string[];
}

/** The lines of a sheet, with a name in pencil on each part, or beside one that has no room: the first of its names that has any. */
export function withNames<P extends Part>(
  { places }: Pick<LaidSheet<P>, "places">,
  size: SheetSize,
  namesOf: (part: P) => readonly string[],
): ToolPath[] {
  const named = places.map(({ part, onSheet }) => ({
    outlines: part.outlines.map((ring) => ring.map(onSheet)),
    names: namesOf(part),
  }));
  return pencilled(sheetPaths({ places }, size), size, named);
}

/** The paths of a drawing of a size, after the names of what is cut there. */
export function pencilled(paths: readonly ToolPath[], size: Size, named: readonly Named[]): ToolPath[] {
  const lines = paths.map(drawnLine);
  const cuts = paths.flatMap(({ operation, points }) => (operation === "through-cut" ? [points] : []));
  const checks = paths.flatMap(({ operation, points }) => (operation === "measure-check" ? [points] : []));
  const drawn: ToolPath[] = [];
  for (const { outlines, names } of named) {
    const words = names.map(inStrokes).filter(Boolean);
    const name = nameIn({ outlines, words, size, lines, taken: [...cuts, ...checks] });
    drawn.push(...name);
    lines.push(...name.map(({ points }) => points));
  }
  return [...drawn, ...paths];
}

interface Room {
  readonly outlines: readonly Ring[];
  readonly words: readonly string[];
  readonly size: Size;
  readonly lines: readonly (readonly Point[])[];
  /** Outlines in which no name of another part stands. */
  readonly taken: readonly Ring[];
}

function nameIn({ outlines, words, size, lines, taken }: Room): ToolPath[] {
  const box = boxOf(outlines);
  const around = near(box, size);
  const others = taken.filter((ring) => meets(boxOf([ring]), around));
  for (const name of words) {
    const on = nameAt(box, lines, name, HEIGHTS, (spot) => isWithin(outlines, spot));
    if (on.length > 0) return on;
    const beside = nameAt(around, lines, name, BESIDE, (spot) => !isWithin(others, spot));
    if (beside.length > 0) return beside;
  }
  return [];
}

function nameAt(
  place: Box,
  lines: readonly (readonly Point[])[],
  name: string,
  heights: readonly number[],
  isAllowed: (spot: WordsSpot) => boolean,
): ToolPath[] {
  for (const high of heights) {
    const wide = strokesWidth(name, high);
    const spot = wordsSpot(place, lines, { width: wide + 2 * FREE, height: high + 2 * FREE }, isAllowed);
    if (spot) return strokesOf(name, high).map((stroke) => pencil(stroke.map(placer(spot, wide, high))));
  }
  return [];
}

/** What lies near a part on its sheet. */
function near({ left, top, right, bottom }: Box, { width, height }: Size): Box {
  return {
    left: Math.max(0, left - NEAR),
    top: Math.max(0, top - NEAR),
    right: Math.min(width, right + NEAR),
    bottom: Math.min(height, bottom + NEAR),
  };
}

function meets(one: Box, other: Box): boolean {
  return one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom;
}

function isWithin(rings: readonly Ring[], { x, y }: WordsSpot): boolean {
  return stretchesOf(levelCrossings(rings, y)).some(({ from, to }) => from < x && x < to);
}

/** From words' upper left corner to the sheet; upright words run upward. */
function placer({ x, y, upright }: WordsSpot, wide: number, high: number): (point: Point) => Point {
  return ([px, py]) => {
    const [across, down] = [px - wide / 2, py - high / 2];
    return upright ? [x + down, y - across] : [x + across, y + down];
  };
}

function pencil(points: readonly Point[]): ToolPath {
  return { operation: "pencil-mark", points, closed: false };
}
