import { ROW_COLUMNS } from "../../core/class/seat-row.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { OF_A_BOOK } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import { type Readings, readEach } from "../files/readings.ts";
import type { YamlFile } from "../files/yaml.ts";
import { tableError } from "../tables/table-error.ts";
import { cellName, type TableRow } from "../tables/table-row.ts";
import { columnsOf } from "./book-columns.ts";
import { readCell } from "./read-cell.ts";
import { FIT_COLUMNS, LIGHT_COLUMNS } from "./schema-seat.ts";
import { areLines, type NamedRow, namedRow } from "./seat-lines.ts";

/** A row of the books table as the front matter would state it, with its place in the file. */
export interface BookRow extends YamlFile {
  readonly value: Record<string, unknown>;
  /** What messages call the cell of a column: `leaves in cell F3`. */
  readonly cellOf: (column: number) => string;
}

/**
 * Reads a books table: a head row with the columns' names, then a row for each seat; or nothing but lines as a class's page
 * writes them. @throws KitError where no row can be read
 */
export function readBooks(file: string, rows: readonly TableRow[], kits: readonly Kit[]): Readings<BookRow> {
  const lines = areLines(rows);
  const columns = lines ? ROW_COLUMNS : columnsOf(file, rows[0]);
  return readEach(lines ? rows : rows.slice(1), (row) => toRow(file, namedRow(row, columns), kits));
}

function toRow(file: string, row: NamedRow, kits: readonly Kit[]): BookRow {
  const { columns } = row;
  const wrong: KitMessage[] = [];
  const cellOf = (column: number): string =>
    say.frontCellField({ column: columns[column - 1] ?? "", cell: cellName(row.inOneCell ? 1 : column, row.row) });
  const tell = (column: number, given: string, allowed: string): void => {
    wrong.push({
      ...{ file, line: row.line, column, field: cellOf(column) },
      ...{ given, allowed, remedy: say.frontCorrectCell() },
    });
  };
  const cells = new Map<string, unknown>();
  for (const [i, cell] of row.cells.entries()) {
    const name = columns[i] ?? "";
    if (cell === "") continue;
    if (name === "") throw tableError(file, row.line, say.frontCellBeyond({ cell }), cellsIn(columns));
    const read = readCell(name, cell, kits);
    if ("value" in read) cells.set(name, read.value);
    else tell(i + 1, read.given, read.allowed);
  }
  const missing = borderMissing(cells);
  if (missing) tell(columns.indexOf(missing.given) + 1, say.frontBorderAlone(missing), say.frontBothBorders());
  if (wrong.length > 0) throw new KitError(wrong);
  return { value: seatOf(cells), placeOf: (path, key) => placeIn(row, path, key), cellOf };
}

function cellsIn(columns: readonly string[]): string {
  return say.frontCells({ count: columns.filter((name) => name !== "").length });
}

function borderMissing(cells: ReadonlyMap<string, unknown>): { given: string; missing: string } | undefined {
  const [before, after] = [cells.has("borderBefore"), cells.has("borderAfter")];
  if (before === after) return undefined;
  return before ? { given: "borderBefore", missing: "borderAfter" } : { given: "borderAfter", missing: "borderBefore" };
}

/** The cells as a seat of the front matter; a row without a book has none. */
function seatOf(cells: ReadonlyMap<string, unknown>): Record<string, unknown> {
  const pick = (names: readonly string[]): Record<string, unknown> =>
    Object.fromEntries(names.filter((name) => cells.has(name)).map((name) => [name, cells.get(name)]));
  const { borderBefore, borderAfter, ...fit } = pick(FIT_COLUMNS);
  const borders = borderBefore === undefined ? {} : { borderLeaves: [borderBefore, borderAfter] };
  const light = Object.entries(pick(Object.keys(LIGHT_COLUMNS))).map(([name, value]) => [LIGHT_COLUMNS[name], value]);
  const stated = { book: pick(OF_A_BOOK), fit: { ...fit, ...borders }, light: Object.fromEntries(light) };
  return {
    ...pick(["seat", "kit", "pace"]),
    ...Object.fromEntries(Object.entries(stated).filter(([, keys]) => Object.keys(keys).length > 0)),
  };
}

/** The line, and the column of the table, from 1, that a field came from. */
function placeIn(
  { line, columns }: NamedRow,
  path: readonly PropertyKey[],
  key: string | undefined,
): { line: number; column: number } {
  const named = [...path, ...(key === undefined ? [] : [key])].filter((step) => typeof step === "string");
  const border = path.includes("borderLeaves") ? (path.at(-1) === 1 ? "borderAfter" : "borderBefore") : undefined;
  const light =
    path[0] === "light" ? Object.keys(LIGHT_COLUMNS).find((name) => LIGHT_COLUMNS[name] === named.at(-1)) : undefined;
  const at = columns.indexOf(border ?? light ?? named.findLast((step) => columns.includes(step)) ?? "seat");
  return { line, column: at + 1 || 1 };
}
