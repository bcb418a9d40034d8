import type { SeatPart } from "../../../core/class/class-sheets.ts";
import type { NamedSheet } from "../../../core/class/preparation.ts";
import type { PartPlace } from "../../../core/packing/lay-out.ts";
import type { Operation, ToolPath } from "../../../core/packing/operation.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import { seatPartsText } from "../../../words/seats.ts";
import { type Figure, figureOf } from "../figure.ts";
import { lineLook } from "../line-kinds.ts";
import { linePath, ringPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";

/** Letters on a sheet, in the sheet's own mm: it is printed at about a third. */
const LETTERS = 8;

/** A part narrower than this has its seat's number only, mm. */
const ROOM_FOR_NAME = 60;

/** A cut sheet of the class, small: every part with its seat's number, and its name where there is room. */
export function cutSheetFigure({ name, size, sheet }: NamedSheet): Figure {
  const label = say.sheetLabel({
    name,
    width: num(size.width, 0),
    height: num(size.height, 0),
    parts: seatPartsText(sheet.parts),
  });
  const lines = sheet.paths.map((path) => tag("path", { d: pathData(path), ...look(path.operation) }));
  const names = sheet.places.map((place) => partWords(place, placeText(place)));
  const edge = tag("path", {
    d: `M0 0H${num(size.width)}V${num(size.height)}H0Z`,
    fill: "#fff",
    stroke: "#000",
    "stroke-width": 0.8,
  });
  const field = { left: -1, top: -1, width: size.width + 2, height: size.height + 2 };
  return figureOf(field, label, edge + lines.join("") + names.join(""), "cut-sheet");
}

function placeText({ part, width, height }: PartPlace<SeatPart>): string {
  return Math.max(width, height) >= ROOM_FOR_NAME
    ? say.sheetPartShort({ seat: part.seat, part: partName(part) })
    : String(part.seat);
}

/** A part's words in the middle of its box, along its longer side, on a white ground so that lines do not run through them. */
function partWords(place: Omit<PartPlace, "part">, words: string): string {
  const x = place.x + place.width / 2;
  const y = place.y + place.height / 2;
  const upright = place.height > place.width && words.length * LETTERS * 0.5 > place.width;
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
