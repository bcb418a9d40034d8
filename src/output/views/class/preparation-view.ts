import type { SeatPart } from "../../../core/class/class-sheets.ts";
import { type NamedSheet, partCounts } from "../../../core/class/preparation.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { materialName, partName } from "../../../words/parts.ts";
import { seatsText } from "../../../words/seats.ts";

/** Pieces of one kind to cut before the class. */
export interface PreparationRow {
  /** `2 × door, card`. */
  readonly what: string;
  /** For which seats, and on which sheets. */
  readonly where: string;
}

/** Stuffs in the order in which they are cut. */
const ORDER: readonly SeatPart["material"][] = ["card", "acetate", "paper"];

/** What is cut before the class, in the order of the sheets: card first, then what is cut from other stuff. `fitting` counts the seats that fit. */
export function preparationRows(
  parts: readonly SeatPart[],
  sheets: readonly NamedSheet[],
  fitting: number,
): PreparationRow[] {
  return partCounts(parts, sheets)
    .toSorted((a, b) => ORDER.indexOf(a.material) - ORDER.indexOf(b.material))
    .map((row) => ({
      what: say.teacherPieces({ count: row.count, part: partName(row), material: materialName(row) }),
      where: whereText(row.seats.length === fitting ? say.teacherAllSeats() : seatsText(row.seats), row.sheets),
    }));
}

function whereText(where: string, sheets: readonly string[]): string {
  return sheets.length === 0 ? where : say.teacherOnSheets({ where, count: sheets.length, names: rowText(sheets) });
}
