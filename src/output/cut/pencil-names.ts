import { type Box, boxOf, type Size } from "../../core/geometry/box.ts";
import { insideOf } from "../../core/geometry/inside.ts";
import { LineField } from "../../core/geometry/line-field.ts";
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

/** Free room round words, how far from its part a name may stand, and a sheet's edge that stays free of names, mm. */
const FREE = 1;
const NEAR = 30;
const MARGIN = 6;

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
  return pencilled(sheetPaths({ places }, size), size, named, MARGIN);
}

/** The paths of a drawing of a size, after the names of what is cut there; a `margin` stays free of names beside their parts, mm. */
export function pencilled(paths: readonly ToolPath[], size: Size, named: readonly Named[], margin = 0): ToolPath[] {
  const lines = new LineField(paths.map(drawnLine));
  const cuts = paths.flatMap(({ operation, points }) => (operation === "through-cut" ? [points] : []));
  const checks = paths.flatMap(({ operation, points }) => (operation === "measure-check" ? [points] : []));
  const drawn: ToolPath[] = [];
  for (const { outlines, names } of named) {
    const words = names.map(inStrokes).filter(Boolean);
    const name = nameIn({ outlines, words, field: fieldOf(size, margin), lines, taken: [...cuts, ...checks] });
    drawn.push(...name);
    for (const { points } of name) lines.add(points);
  }
  return [...drawn, ...paths];
}

interface Room {
  readonly outlines: readonly Ring[];
  readonly words: readonly string[];
  /** Where names may stand. */
  readonly field: Box;
  readonly lines: LineField;
  /** Outlines in which no name of another part stands. */
  readonly taken: readonly Ring[];
}

function nameIn({ outlines, words, field, lines, taken }: Room): ToolPath[] {
  const box = boxOf(outlines);
  const around = near(box, field);
  const isOn = insideOf(outlines);
  const isTaken = insideOf(taken.filter((ring) => meets(boxOf([ring]), around)));
  for (const name of words) {
    const on = nameAt(box, lines, name, HEIGHTS, isOn);
    if (on.length > 0) return on;
    const beside = nameAt(around, lines, name, BESIDE, (spot) => !isTaken(spot));
    if (beside.length > 0) return beside;
  }
  return [];
}

function nameAt(
  place: Box,
  lines: LineField,
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
function near({ left, top, right, bottom }: Box, field: Box): Box {
  return {
    left: Math.max(field.left, left - NEAR),
    top: Math.max(field.top, top - NEAR),
    right: Math.min(field.right, right + NEAR),
    bottom: Math.min(field.bottom, bottom + NEAR),
  };
}

function fieldOf({ width, height }: Size, margin: number): Box {
  return { left: margin, top: margin, right: width - margin, bottom: height - margin };
}

function meets(one: Box, other: Box): boolean {
  return one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom;
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
