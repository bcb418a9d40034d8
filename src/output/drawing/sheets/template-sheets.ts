import type { Point } from "../../../core/geometry/point.ts";
import { type PlacedPart, packParts } from "../../../core/packing/pack.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import type { Part } from "../../../core/window/part.ts";
import * as say from "../../../words/messages.ts";
import { partDrawing, spotInside } from "../part-drawing.ts";
import { tag, text } from "../svg-text.ts";
import { grainMark } from "./grain-mark.ts";
import { keyLines, legend } from "./template-key.ts";
import { FIELD, LETTER_ROOM, type Letters, type TemplateSheet } from "./template-sheet.ts";
import { tiledSheets } from "./tiled-sheets.ts";
import { calibration } from "./true-scale.ts";

/** Every part at true scale: several on a sheet where they fit, one over several sheets where it is larger. */
export function templateSheets(parts: readonly Part[], units: UnitSystem): TemplateSheet[] {
  const letters = new Map(
    parts.map((part, i) => [part, say.drawTemplateLetter({ letter: String.fromCharCode(65 + i) })]),
  );
  const { fields, tooLarge } = packParts(parts, FIELD.width, FIELD.height);
  return [
    ...fields.map((field, i) => ({
      title: say.drawTemplateSheet({ number: i + 1, of: fields.length }),
      drawing: fieldDrawing(field, letters, units),
    })),
    ...tooLarge.flatMap((part) => tiledSheets(part, letters, units)),
  ];
}

function fieldDrawing(field: readonly PlacedPart[], letters: Letters, units: UnitSystem): string {
  const parts = field.map(({ part }) => part);
  return [
    legend(),
    ...keyLines(parts, letters),
    ...field.map((placed) => lettered(placed, letters.get(placed.part)!)),
    calibration(units),
  ].join("");
}

/** A part in its place with its letter on it, or beside it where no material is wide enough. */
function lettered({ part, place, x, y }: PlacedPart, letter: string): string {
  const onSheet = (point: Point): Point => {
    const [px, py] = place(point);
    return [px + FIELD.left, py + FIELD.top];
  };
  const spot = spotInside(part, LETTER_ROOM);
  const named = spot
    ? grainMark(part, spot, onSheet) + letterAt(onSheet(spot), letter)
    : text(x + FIELD.left - 0.6, y + FIELD.top + 2.6, letter, {
        "font-size": 3.6,
        "font-weight": 700,
        "text-anchor": "end",
      });
  return partDrawing(part, onSheet) + named;
}

function letterAt([x, y]: Point, letter: string): string {
  return (
    tag("circle", { cx: x, cy: y, r: 2.6, fill: "#fff", stroke: "#000", "stroke-width": 0.2 }) +
    text(x, y + 1.3, letter, { "font-size": 3.6, "font-weight": 700, "text-anchor": "middle" })
  );
}
