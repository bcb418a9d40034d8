import { writePlates } from "../../core/book/plates.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { OF_A_BOOK } from "../../core/refit/refit.ts";
import type { FieldPath } from "../files/problem.ts";
import { readCell } from "./read-cell.ts";
import { FIT_COLUMNS, LIGHT_COLUMNS } from "./schema-seat.ts";

/** Seats of a front matter as cells of a books table, and back. */

/** Which key of a seat a column belongs to. */
export type SeatKey = "seat" | "kit" | "book" | "fit" | "light" | "pace";

export function keyOfColumn(column: string): SeatKey {
  if ((OF_A_BOOK as readonly string[]).includes(column)) return "book";
  if ((FIT_COLUMNS as readonly string[]).includes(column)) return "fit";
  return Object.hasOwn(LIGHT_COLUMNS, column) ? "light" : (column as SeatKey);
}

/** Where a column's field stands in a seat of a front matter. */
export function pathOfColumn(column: string): FieldPath {
  const key = keyOfColumn(column);
  if (column === "borderBefore" || column === "borderAfter")
    return ["fit", "borderLeaves", column === "borderBefore" ? 0 : 1];
  if (key === "light") return ["light", LIGHT_COLUMNS[column]!];
  return key === "book" || key === "fit" ? [key, column] : [column];
}

/** The column whose cell a field of a seat stands in. */
export function columnOfPath(path: readonly PropertyKey[]): string {
  const [key, name, place] = path;
  if (name === "borderLeaves") return place === 1 ? "borderAfter" : "borderBefore";
  if (key === "light") return Object.keys(LIGHT_COLUMNS).find((column) => LIGHT_COLUMNS[column] === name) ?? "seat";
  return String((key === "book" || key === "fit" ? name : key) ?? "seat");
}

/** A field's value as a cell. */
export function cellText(column: string, value: unknown): string {
  if (value === undefined || value === null) return "";
  if (column === "depths" && Array.isArray(value)) return value.join("; ");
  if (column !== "plates" || !Array.isArray(value)) return String(value);
  const plates = value.filter(
    (one): one is { afterPage: number; leaves: number } =>
      typeof one === "object" && one !== null && "afterPage" in one,
  );
  return writePlates(plates, "plain");
}

/** A cell as the front matter states it; undefined for an empty one. What cannot be read stays a text, which the schema tells of. */
export function cellValue(column: string, cell: string, kits: readonly Kit[]): unknown {
  const text = cell.trim();
  if (text === "") return undefined;
  const read = readCell(column, text, kits);
  return "value" in read ? read.value : text;
}
