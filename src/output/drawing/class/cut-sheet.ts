import type { SeatPart } from "../../../core/class/class-sheets.ts";
import type { NamedSheet } from "../../../core/class/preparation.ts";
import { boxAt } from "../../../core/geometry/box.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { PartPlace } from "../../../core/packing/lay-out.ts";
import { drawnLine, type Operation, type ToolPath } from "../../../core/packing/operation.ts";
import { sheetPaths } from "../../../core/packing/sheet-paths.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import { seatPartsText } from "../../../words/seats.ts";
import { type Figure, figureOf } from "../figure.ts";
import { lineLook } from "../line-kinds.ts";
import { linePath, ringPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { wordsWidth } from "../words-width.ts";
import { type WordsSpot, wordsSpot } from "./words-spot.ts";

/** Letters on a sheet, in the sheet's own mm: it is printed at about a third. */
const LETTERS = 8;

/** A part smaller than this has its seat's number only, mm. */
const ROOM_FOR_NAME = 60;

/** Free room round words, mm. */
const FREE = 1.2;

/** A cut sheet of the class, small: every part with its seat's number, and its name where there is room. */
export function cutSheetFigure({ name, size, sheet }: NamedSheet): Figure {
  const label = say.sheetLabel({
    name,
    width: num(size.width, 0),
    height: num(size.height, 0),
    parts: seatPartsText(sheet.parts),
  });
  const paths = sheetPaths(sheet, size);
  const lines = paths.map((path) => tag("path", { d: pathData(path), ...look(path.operation) }));
  const outlines = paths.map(linesOf);
  const names = sheet.places.map((place) => partWords(place, outlines));
  const edge = tag("path", {
    d: `M0 0H${num(size.width)}V${num(size.height)}H0Z`,
    fill: "#fff",
    stroke: "#000",
    "stroke-width": 0.8,
  });
  const field = { left: -1, top: -1, width: size.width + 2, height: size.height + 2 };
  return figureOf(field, label, edge + lines.join("") + names.join(""), "cut-sheet");
}

/** A path as lines that words keep clear of; what is measured is crossed twice, so that no words stand in it. */
function linesOf(path: ToolPath): readonly Point[] {
  const line = drawnLine(path);
  const [, second, third, fourth] = line;
  return path.operation === "measure-check" ? [...line, third!, fourth!, second!] : line;
}

/** A part's seat and name where no line runs through them, or its seat alone; in the middle where lines are everywhere. */
function partWords(place: PartPlace<SeatPart>, outlines: readonly (readonly Point[])[]): string {
  const { part, x, y, width, height } = place;
  const box = boxAt(x, y, place);
  const seat = String(part.seat);
  const named = say.sheetPartShort({ seat: part.seat, part: partName(part) });
  const choices = Math.max(width, height) >= ROOM_FOR_NAME ? [named, seat] : [seat];
  for (const words of choices) {
    const spot = wordsSpot(box, outlines, { width: wordsWidth(words, LETTERS) + 2 * FREE, height: LETTERS + 2 * FREE });
    if (spot) return wordsAt(spot, words);
  }
  return wordsAt({ x: x + width / 2, y: y + height / 2, upright: false }, seat);
}

/** Words about their middle, on a white ground so that lines beside them do not touch them. */
function wordsAt({ x, y, upright }: WordsSpot, words: string): string {
  return text(0, LETTERS * 0.34, words, {
    "font-size": LETTERS,
    "font-weight": 600,
    "text-anchor": "middle",
    fill: "#000",
    stroke: "#fff",
    "stroke-width": 2.4,
    "paint-order": "stroke",
    transform: `translate(${num(x)} ${num(y)})${upright ? " rotate(-90)" : ""}`,
  });
}

function look(operation: Operation): Record<string, string | number | undefined> {
  if (operation === "through-cut") return { ...lineLook("cut", 2), fill: "none" };
  if (operation === "press-score") return { ...lineLook("score", 2), fill: "none" };
  return { ...lineLook("position", 1.5), fill: "none" };
}

function pathData({ points, closed }: ToolPath): string {
  return closed ? ringPath(points) : linePath(points);
}
