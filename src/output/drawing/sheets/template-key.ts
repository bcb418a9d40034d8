import type { Part } from "../../../core/window/part.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { markText, materialName, partName } from "../../../words/parts.ts";
import { type LineKind, lineLook } from "../line-kinds.ts";
import { labelFits } from "../part-drawing.ts";
import { levelPath } from "../path.ts";
import { tag, text } from "../svg-text.ts";
import { lettersWithin } from "../words-width.ts";
import { FIELD, type Letters } from "./template-sheet.ts";

/** Rows of keys that have room above the legend; more keys stand in more columns, mm. */
const ROWS = 5;
const ROW = 3.1;
const BETWEEN = 3;

/** Letter, name, count, material and face of each part, and what its position lines mean where no label stands at them. */
export function keyLines(parts: readonly Part[], letters: Letters): string[] {
  const column = (FIELD.width + BETWEEN) / Math.ceil(parts.length / ROWS);
  return parts.map((part, i) => {
    const words = keyText(part, letters.get(part)!);
    const [x, y] = [FIELD.left + Math.floor(i / ROWS) * column, 8.2 + (i % ROWS) * ROW];
    return text(x, y, words, lettersWithin(column - BETWEEN, words, 2.5));
  });
}

function keyText(part: Part, letter: string): string {
  const marks = new Set(part.marks.filter((mark) => mark.kind && !labelFits(mark)).map((mark) => markText(mark.kind)));
  const key = {
    letter,
    part: partName(part),
    count: part.count,
    material: materialName(part),
    face: part.frame === "own" ? "either" : "front",
  };
  return marks.size > 0 ? say.drawTemplateKeyMarks({ ...key, marks: rowText([...marks]) }) : say.drawTemplateKey(key);
}

/** Line kinds in words and samples, on every template sheet. */
export function legend(): string {
  const y = FIELD.top - 3.4;
  const small = { "font-size": 2.7 };
  const sample = (x: number, kind: LineKind, words: string): string =>
    tag("path", { d: levelPath([x, y], 14), ...lineLook(kind) }) + text(x + 15.5, y + 0.9, words, small);
  return [
    sample(FIELD.left, "cut", say.drawLineCut()),
    sample(FIELD.left + 30, "score", say.drawLineScore()),
    sample(FIELD.left + 62, "position", say.drawLinePosition()),
    text(FIELD.left + 96, y + 0.9, say.drawTemplateCutOnly(), small),
  ].join("");
}
