import type { Refit } from "../../../core/refit/refit.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { lengthValue } from "../../../input/desk/length-text.ts";
import type { CellChange } from "./desk-class.ts";
import type { GridRow } from "./seat-grid.ts";

/** Columns of lengths, by what a refit calls them. */
const LENGTHS = [
  "leafHeight",
  "leafWidth",
  "blockThickness",
  "height",
  "head",
  "lightDiameter",
  "lightHeight",
] as const;
const COUNTS = ["leaves", "pageOneLeaf", "lastPage", "pictureLeaves"] as const;

/** The cells that an offer fills: what it changes of the seat. Lengths are in the class's units, or as the cell has them. */
export function offerCells(row: number, { cells, seat }: GridRow, offer: Refit, units: UnitSystem): CellChange[] {
  const was = seat?.refit ?? {};
  const changes: CellChange[] = [];
  const put = (column: string, text: string): number => changes.push({ row, column, text });
  const isNew = (key: keyof Refit): boolean =>
    offer[key] !== undefined && JSON.stringify(offer[key]) !== JSON.stringify(was[key]);
  const length = (mm: number, cell: string | undefined): string => String(lengthValue(mm, cell, units));
  for (const key of LENGTHS) if (isNew(key)) put(key, length(offer[key]!, cells[key]));
  for (const key of COUNTS) if (isNew(key)) put(key, String(offer[key]));
  if (isNew("openingDegrees")) put("opening", String(offer.openingDegrees));
  if (isNew("foldStyle")) put("foldStyle", offer.foldStyle!);
  if (isNew("depths")) put("depths", offer.depths!.map((depth) => length(depth, undefined)).join("; "));
  if (isNew("borderLeaves")) {
    put("borderBefore", String(offer.borderLeaves![0]));
    put("borderAfter", String(offer.borderLeaves![1]));
  }
  return changes;
}
