import type { SeatPart } from "../../../core/class/class-sheets.ts";
import type { NamedSheet } from "../../../core/class/preparation.ts";
import { boxAt } from "../../../core/geometry/box.ts";
import { levelCrossings, type Stretch, stretchesOf } from "../../../core/geometry/crossings.ts";
import { insideOf } from "../../../core/geometry/inside.ts";
import { LineField } from "../../../core/geometry/line-field.ts";
import type { Point, Ring } from "../../../core/geometry/point.ts";
import type { PartPlace } from "../../../core/packing/lay-out.ts";
import { drawnLine, type Operation, type ToolPath } from "../../../core/packing/operation.ts";
import { sheetPaths } from "../../../core/packing/sheet-paths.ts";
import * as say from "../../../words/messages.ts";
import { seatPartNames, seatPartsText } from "../../../words/seats.ts";
import { type Figure, figureOf } from "../figure.ts";
import { type LineKind, lineLook } from "../line-kinds.ts";
import { linePath, ringPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { wordsWidth } from "../words-width.ts";
import { type WordsSpot, wordsSpot } from "./words-spot.ts";

/** How wide a sheet is printed, and the height of its letters there, mm. */
const PRINTED = 58;
const LETTERS = 2.55;

/** A part smaller than this on paper has its seat's number only; free room round words there, mm. */
const ROOM_FOR_NAME = 16;
const FREE = 0.33;

/** Lines of so small a sheet are finer than at true scale. */
const FINER = 0.6;

/** A cut sheet of the class, small: every part with its seat's number, and its name where there is room. */
export function cutSheetFigure({ name, size, sheet }: NamedSheet): Figure {
  const label = say.sheetLabel({
    name,
    width: num(size.width, 0),
    height: num(size.height, 0),
    parts: seatPartsText(sheet.parts),
  });
  const times = (size.width + 2) / PRINTED;
  const paths = sheetPaths(sheet, size);
  const lines = paths.map((path) =>
    tag("path", { d: pathData(path), ...lineLook(kindOf(path.operation), FINER * times) }),
  );
  const outlines = new LineField(paths.map(linesOf));
  const cuts = sheet.places.map(({ part, onSheet }) => part.outlines.map((ring) => ring.map(onSheet)));
  const names = sheet.places.map((place, i) =>
    partWords(place, { own: cuts[i]!, others: cuts.toSpliced(i, 1).flat(), outlines, times }),
  );
  const edge = tag("path", {
    d: `M0 0H${num(size.width)}V${num(size.height)}H0Z`,
    fill: "#fff",
    stroke: "#000",
    "stroke-width": 0.2 * times,
  });
  const field = { left: -1, top: -1, width: size.width + 2, height: size.height + 2 };
  return figureOf(field, label, edge + lines.join("") + names.join(""), { class: "cut-sheet" });
}

/** A path as lines that words keep clear of; what is measured is crossed twice, so that no words stand in it. */
function linesOf(path: ToolPath): readonly Point[] {
  const line = drawnLine(path);
  const [, second, third, fourth] = line;
  return path.operation === "measure-check" ? [...line, third!, fourth!, second!] : line;
}

/** What stands round a part's words. */
interface Surroundings {
  /** Outlines of the part and of all others, where they lie. */
  readonly own: readonly Ring[];
  readonly others: readonly Ring[];
  /** Lines that words keep clear of. */
  readonly outlines: LineField;
  /** How many times as large as printed. */
  readonly times: number;
}

/** A part's seat and name on it where no line runs through them, or where nothing else lies; its seat alone; on a disc where lines are everywhere. */
function partWords(place: PartPlace<SeatPart>, { own, others, outlines, times }: Surroundings): string {
  const { part, x, y, width, height } = place;
  const box = boxAt(x, y, place);
  const [named, seat] = seatPartNames(part);
  const choices = Math.max(width, height) >= ROOM_FOR_NAME * times ? [named, seat] : [seat];
  const letters = LETTERS * times;
  const free = 2 * FREE * times;
  const isOn = insideOf(own);
  const isOther = insideOf(others);
  for (const words of choices) {
    const size = { width: wordsWidth(words, letters) + free, height: letters + free };
    const spot = wordsSpot(box, outlines, size, isOn) ?? wordsSpot(box, outlines, size, (at) => !isOther(at));
    if (spot) return wordsAt(spot, words, letters);
  }
  const cy = y + height / 2;
  const { from, to } = widestStretch(own, cy, { from: x, to: x + width });
  const cx = (from + to) / 2;
  const disc = tag("circle", {
    cx,
    cy,
    r: Math.max(letters * 0.6, Math.min(wordsWidth(seat, letters), Math.max(width, height)) / 2 + free / 2),
    fill: "#fff",
  });
  return disc + wordsAt({ x: cx, y: cy, upright: false }, seat, letters);
}

/** The widest stretch of outlines at a height; the whole of their width where there is none. */
function widestStretch(rings: readonly Ring[], y: number, whole: Stretch): Stretch {
  const stretches = stretchesOf(levelCrossings(rings, y)).toSorted((a, b) => b.to - b.from - (a.to - a.from));
  return stretches[0] ?? whole;
}

/** Words about their middle, on a white ground so that lines beside them do not touch them. */
function wordsAt({ x, y, upright }: WordsSpot, words: string, letters: number): string {
  return text(0, letters * 0.34, words, {
    "font-size": letters,
    "font-weight": 600,
    "text-anchor": "middle",
    fill: "#000",
    stroke: "#fff",
    "stroke-width": letters * 0.3,
    "paint-order": "stroke",
    transform: `translate(${num(x)} ${num(y)})${upright ? " rotate(-90)" : ""}`,
  });
}

function kindOf(operation: Operation): LineKind {
  if (operation === "through-cut") return "cut";
  return operation === "press-score" ? "score" : "position";
}

function pathData({ points, closed }: ToolPath): string {
  return closed ? ringPath(points) : linePath(points);
}
