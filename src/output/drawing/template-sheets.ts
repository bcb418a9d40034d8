import type { Point } from "../../core/geometry/point.ts";
import { extentOf, type PlacedPart, packParts } from "../../core/packing/pack.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { Part } from "../../core/window/part.ts";
import { lineLook } from "./line-kinds.ts";
import { labelFits, partDrawing, spotInside } from "./part-drawing.ts";
import { num, tag, text } from "./svg-text.ts";
import { BAR_ROOM, calibration, SHEET } from "./true-scale.ts";

/** One true-scale template sheet: its drawing and what it shows. */
export interface TemplateSheet {
  readonly title: string;
  readonly drawing: string;
}

/** Where parts may lie on a sheet, below heading and legend, mm. */
const FIELD = {
  left: BAR_ROOM.left + 3,
  top: 27,
  width: SHEET.width - BAR_ROOM.left - 4,
  height: SHEET.height - BAR_ROOM.foot - 30,
} as const;

/** A lettered disc needs this much material, mm. */
const LETTER_ROOM = 6.5;

/** Tiles of one part overlap by this much, mm. */
const OVERLAP = 12;

/** Every part at true scale: several on a sheet where they fit, one over several sheets where it is larger. */
export function templateSheets(parts: readonly Part[], units: UnitSystem): TemplateSheet[] {
  const letters = new Map(parts.map((part, i) => [part.name, String.fromCharCode(65 + i)]));
  const { fields, tooLarge } = packParts(parts, FIELD.width, FIELD.height);
  return [
    ...fields.map((field, i) => fieldSheet(field, i + 1, fields.length, letters, units)),
    ...tooLarge.flatMap((part) => tiledSheets(part, letters.get(part.name)!, units)),
  ];
}

function fieldSheet(
  field: readonly PlacedPart[],
  number: number,
  of: number,
  letters: ReadonlyMap<string, string>,
  units: UnitSystem,
): TemplateSheet {
  const drawn = field.map(({ part, place, x, y }) => {
    const onSheet = (point: Point): Point => {
      const [px, py] = place(point);
      return [px + FIELD.left, py + FIELD.top];
    };
    const spot = spotInside(part, LETTER_ROOM);
    const letter = letters.get(part.name)!;
    const named = spot
      ? letterAt(onSheet(spot), letter)
      : text(x + FIELD.left - 0.6, y + FIELD.top + 2.6, letter, {
          "font-size": 3.6,
          "font-weight": 700,
          "text-anchor": "end",
        });
    return partDrawing(part, onSheet) + named;
  });
  const parts = field.map(({ part }) => part);
  return {
    title: `sheet ${number} of ${of}`,
    drawing: [legend(), ...keyLines(parts, letters), ...drawn, calibration(units)].join(""),
  };
}

/** A part larger than the sheet: tiles that overlap, match lines with letters, and a small map. */
function tiledSheets(part: Part, letter: string, units: UnitSystem): TemplateSheet[] {
  const box = extentOf(part);
  const step = { x: FIELD.width - OVERLAP, y: FIELD.height - OVERLAP - 16 };
  const columns = Math.max(1, Math.ceil((box.right - box.left - OVERLAP) / step.x));
  const rows = Math.max(1, Math.ceil((box.bottom - box.top - OVERLAP) / step.y));
  const total = columns * rows;
  return Array.from({ length: total }, (_, i) => {
    const column = i % columns;
    const row = Math.floor(i / columns);
    const x = box.left + column * step.x;
    const y = box.top + row * step.y;
    const width = FIELD.width;
    const height = FIELD.height - 16;
    const inner = partDrawing(part, (point) => point);
    const tile = `<svg x="${num(FIELD.left)}" y="${num(FIELD.top)}" width="${num(width)}" height="${num(height)}" viewBox="${num(x, 3)} ${num(y, 3)} ${num(width)} ${num(height)}">${inner}</svg>`;
    return {
      title: `${part.name}, sheet ${i + 1} of ${total}`,
      drawing: [
        legend(),
        ...keyLines([part], new Map([[part.name, letter]])),
        tile,
        matchLines(column, row, columns, rows, height),
        tileMap(column, row, columns, rows),
        calibration(units),
      ].join(""),
    };
  });
}

/** Position lines through the overlap; both sheets carry the same letter at the same line. */
function matchLines(column: number, row: number, columns: number, rows: number, height: number): string {
  const { left, top, width } = FIELD;
  const lines: string[] = [];
  const upright = (x: number, label: string): void => {
    lines.push(
      tag("path", { d: `M${num(x)} ${top}v${num(height)}`, ...lineLook("position") }),
      text(x + 1, top + 4, label, { "font-size": 3.4, "font-weight": 700 }),
    );
  };
  const level = (y: number, label: string): void => {
    lines.push(
      tag("path", { d: `M${num(left)} ${num(y)}h${num(width)}`, ...lineLook("position") }),
      text(left + 1, y - 1, label, { "font-size": 3.4, "font-weight": 700 }),
    );
  };
  if (column > 0) upright(left + OVERLAP / 2, matchLetter("across", column - 1, row, columns, rows));
  if (column < columns - 1) upright(left + width - OVERLAP / 2, matchLetter("across", column, row, columns, rows));
  if (row > 0) level(top + OVERLAP / 2, matchLetter("down", column, row - 1, columns, rows));
  if (row < rows - 1) level(top + height - OVERLAP / 2, matchLetter("down", column, row, columns, rows));
  return lines.join("");
}

function matchLetter(direction: "across" | "down", column: number, row: number, columns: number, rows: number): string {
  const index = direction === "across" ? row * (columns - 1) + column : rows * (columns - 1) + row * columns + column;
  return `match ${index + 1}`;
}

function tileMap(column: number, row: number, columns: number, rows: number): string {
  const size = 4;
  const left = FIELD.left;
  const top = FIELD.top + FIELD.height - 14;
  const cells = Array.from({ length: columns * rows }, (_, i) => {
    const here = i === row * columns + column;
    const x = left + (i % columns) * size;
    const y = top + Math.floor(i / columns) * size;
    return tag("rect", {
      x,
      y,
      width: size,
      height: size,
      fill: here ? "#000" : "#fff",
      stroke: "#000",
      "stroke-width": 0.2,
    });
  });
  return (
    cells.join("") +
    text(
      left + columns * size + 2,
      top + 3.4,
      "black: this sheet. Lay sheets so that the match lines with one number lie on each other, and tape.",
      { "font-size": 2.8 },
    )
  );
}

/** Letter, name, count, material and face of each part, and what its position lines mean where no label stands at them. */
function keyLines(parts: readonly Part[], letters: ReadonlyMap<string, string>): string[] {
  return parts.map((part, i) => {
    const marks = [
      ...new Set(part.marks.filter((mark) => mark.label !== "" && !labelFits(mark)).map((mark) => mark.label)),
    ];
    const positions = marks.length > 0 ? `; position: ${marks.join(", ")}` : "";
    const words = `${letters.get(part.name)} ${part.name}: ${part.count} of ${part.material}, ${face(part)}${positions}`;
    return text(FIELD.left, 8.2 + i * 3.1, words, { "font-size": 2.5 });
  });
}

function face(part: Part): string {
  return part.frame === "own" ? "either face" : "face toward you";
}

/** Line kinds in words and samples, on every template sheet. */
function legend(): string {
  const y = FIELD.top - 3.4;
  const sample = (x: number, kind: "cut" | "score" | "position"): string =>
    tag("path", { d: `M${num(x)} ${num(y)}h14`, ...lineLook(kind) }) +
    text(x + 15.5, y + 0.9, kind, { "font-size": 2.7 });
  return (
    sample(FIELD.left, "cut") +
    sample(FIELD.left + 30, "score") +
    sample(FIELD.left + 62, "position") +
    text(FIELD.left + 96, y + 0.9, "Cut on the full lines only.", { "font-size": 2.7 })
  );
}

function letterAt([x, y]: Point, letter: string): string {
  return (
    tag("circle", { cx: x, cy: y, r: 2.6, fill: "#fff", stroke: "#000", "stroke-width": 0.2 }) +
    text(x, y + 1.3, letter, { "font-size": 3.6, "font-weight": 700, "text-anchor": "middle" })
  );
}
