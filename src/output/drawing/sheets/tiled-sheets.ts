import type { Point } from "../../../core/geometry/point.ts";
import { extentOf } from "../../../core/packing/pack.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import type { Part } from "../../../core/window/part.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import { lineLook } from "../line-kinds.ts";
import { partDrawing, spotInside } from "../part-drawing.ts";
import { levelPath, uprightPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { grainMark } from "./grain-mark.ts";
import { keyLines, legend } from "./template-key.ts";
import { FIELD, LETTER_ROOM, type Letters, type TemplateSheet } from "./template-sheet.ts";
import { calibration } from "./true-scale.ts";

/** Tiles of one part overlap by this much, mm. */
const OVERLAP = 12;

/** Room for the map of the tiles below each of them, mm. */
const MAP_ROOM = 16;

const TILE = { width: FIELD.width, height: FIELD.height - MAP_ROOM } as const;

/** A tile's place among those of its part, from 0. */
interface Tile {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** A part larger than the sheet: tiles that overlap, match lines with numbers, and a small map. */
export function tiledSheets(part: Part, letters: Letters, units: UnitSystem): TemplateSheet[] {
  const box = extentOf(part);
  const step = { x: TILE.width - OVERLAP, y: TILE.height - OVERLAP };
  const columns = Math.max(1, Math.ceil((box.right - box.left - OVERLAP) / step.x));
  const rows = Math.max(1, Math.ceil((box.bottom - box.top - OVERLAP) / step.y));
  const of = columns * rows;
  return Array.from({ length: of }, (_, i) => {
    const tile = { column: i % columns, row: Math.floor(i / columns), columns, rows };
    return {
      title: say.drawTemplateTile({ part: partName(part), number: i + 1, of }),
      drawing: [
        legend(),
        ...keyLines([part], letters),
        windowOn(part, box.left + tile.column * step.x, box.top + tile.row * step.y),
        matchLines(tile),
        tileMap(tile),
        calibration(units),
      ].join(""),
    };
  });
}

/** What a tile shows of a part: the piece whose upper left corner is (x, y). */
function windowOn(part: Part, x: number, y: number): string {
  const { width, height } = TILE;
  const viewBox = `${num(x, 3)} ${num(y, 3)} ${num(width)} ${num(height)}`;
  return tag(
    "svg",
    { x: FIELD.left, y: FIELD.top, width, height, viewBox },
    partDrawing(part, asItIs) + grainMark(part, spotInside(part, LETTER_ROOM), asItIs),
  );
}

const asItIs = (point: Point): Point => point;

/** Position lines through the overlap; both sheets carry the same number at the same line. */
function matchLines({ column, row, columns, rows }: Tile): string {
  const { left, top } = FIELD;
  const { width, height } = TILE;
  const across = (before: number): number => row * (columns - 1) + before;
  const down = (above: number): number => rows * (columns - 1) + above * columns + column;
  return [
    column > 0 ? uprightMatch(left + OVERLAP / 2, across(column - 1)) : "",
    column < columns - 1 ? uprightMatch(left + width - OVERLAP / 2, across(column), "end") : "",
    row > 0 ? levelMatch(top + OVERLAP / 2, down(row - 1)) : "",
    row < rows - 1 ? levelMatch(top + height - OVERLAP / 2, down(row)) : "",
  ].join("");
}

const MATCH_WORDS = { "font-size": 3.4, "font-weight": 700 };

/** Its number stands at the side of the line where the sheet goes on. */
function uprightMatch(x: number, index: number, anchor: "start" | "end" = "start"): string {
  return (
    tag("path", { d: uprightPath([x, FIELD.top], TILE.height), ...lineLook("position") }) +
    text(x + (anchor === "start" ? 1 : -1), FIELD.top + 4, say.drawTemplateMatch({ number: index + 1 }), {
      ...MATCH_WORDS,
      "text-anchor": anchor,
    })
  );
}

/** Its number stands below it, past the upright line of a tile at the left. */
function levelMatch(y: number, index: number): string {
  return (
    tag("path", { d: levelPath([FIELD.left, y], TILE.width), ...lineLook("position") }) +
    text(FIELD.left + OVERLAP / 2 + 0.8, y + 3.4, say.drawTemplateMatch({ number: index + 1 }), MATCH_WORDS)
  );
}

const CELL = 4;

function tileMap({ column, row, columns, rows }: Tile): string {
  const { left } = FIELD;
  const top = FIELD.top + FIELD.height - 14;
  const cells = Array.from({ length: columns * rows }, (_, i) =>
    tag("rect", {
      x: left + (i % columns) * CELL,
      y: top + Math.floor(i / columns) * CELL,
      width: CELL,
      height: CELL,
      fill: i === row * columns + column ? "#000" : "#fff",
      stroke: "#000",
      "stroke-width": 0.2,
    }),
  );
  const words = text(left + columns * CELL + 2, top + 3.4, say.drawTemplateMap(), { "font-size": 2.8 });
  return cells.join("") + words;
}
