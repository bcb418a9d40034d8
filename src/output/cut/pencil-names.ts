import { type Box, boxAt } from "../../core/geometry/box.ts";
import { levelCrossings, stretchesOf } from "../../core/geometry/crossings.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { SheetSize } from "../../core/kit/kit.ts";
import type { LaidSheet } from "../../core/packing/lay-out.ts";
import { drawnLine, type ToolPath } from "../../core/packing/operation.ts";
import { sheetPaths } from "../../core/packing/sheet-paths.ts";
import type { Part } from "../../core/window/part.ts";
import { type WordsSpot, wordsSpot } from "../drawing/class/words-spot.ts";
import { inStrokes, strokesOf, strokesWidth } from "./stroke-letters.ts";

/** Heights of letters, mm: the largest that a part has room for. */
const HEIGHTS = [6, 4, 3] as const;

/** Free room round words, mm. */
const FREE = 1;

/** The lines of a sheet, with a name in pencil on each part that has room for one: the first of its names that fits. */
export function withNames<P extends Part>(
  { places }: Pick<LaidSheet<P>, "places">,
  size: SheetSize,
  namesOf: (part: P) => readonly string[],
): ToolPath[] {
  const paths = sheetPaths({ places }, size);
  const lines = paths.map(drawnLine);
  const cuts = paths.filter(({ operation }) => operation === "through-cut").map(({ points }) => points);
  const onPart = ({ x, y }: WordsSpot): boolean =>
    stretchesOf(levelCrossings(cuts, y)).some(({ from, to }) => from < x && x < to);
  const names = places.flatMap((place) =>
    nameIn(boxAt(place.x, place.y, place), lines, namesOf(place.part).map(inStrokes).filter(Boolean), onPart),
  );
  return [...names, ...paths];
}

function nameIn(
  box: Box,
  lines: readonly (readonly Point[])[],
  names: readonly string[],
  onPart: (spot: WordsSpot) => boolean,
): ToolPath[] {
  for (const name of names)
    for (const height of HEIGHTS) {
      const [wide, high] = [strokesWidth(name, height), height];
      const spot = wordsSpot(box, lines, { width: wide + 2 * FREE, height: high + 2 * FREE }, onPart);
      if (spot) return strokesOf(name, height).map((stroke) => pencil(stroke.map(placer(spot, wide, high))));
    }
  return [];
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
