import { readPlates } from "../../core/book/plates.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { OF_A_BOOK } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import { type Readings, readEach } from "../files/readings.ts";
import type { YamlFile } from "../files/yaml.ts";
import { tableError } from "../tables/table-error.ts";
import { cellName, type TableRow } from "../tables/table-row.ts";
import { columnsOf } from "./book-columns.ts";
import { FIT_COLUMNS } from "./schema-seat.ts";

/** A row of the books table as the front matter would state it, with its place in the file. */
export interface BookRow extends YamlFile {
  readonly value: Record<string, unknown>;
  /** What messages call the cell of a column: `leaves in cell F3`. */
  readonly cellOf: (column: number) => string;
}

/** A table of books: its file, and its kits by what they may be called. */
interface BooksTable {
  readonly file: string;
  readonly columns: readonly string[];
  readonly kits: readonly Kit[];
}

/** Reads a books table: a head row with the columns' names, then a row for each seat. @throws KitError where no row can be read */
export function readBooks(file: string, rows: readonly TableRow[], kits: readonly Kit[]): Readings<BookRow> {
  const [head, ...body] = rows;
  const columns = columnsOf(file, head);
  return readEach(body, (row) => toRow({ file, columns, kits }, row));
}

function toRow(table: BooksTable, row: TableRow): BookRow {
  const { file, columns } = table;
  const wrong: KitMessage[] = [];
  const cellOf = (column: number): string =>
    say.frontCellField({ column: columns[column - 1] ?? "", cell: cellName(column, row.row) });
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
    const read = readCell(name, cell, table);
    if (read === undefined) tell(i + 1, say.frontPlatesCell({ cell }), say.frontPlatesForm());
    cells.set(name, read);
  }
  const missing = borderMissing(cells);
  if (missing) tell(columns.indexOf(missing.given) + 1, say.frontBorderAlone(missing), say.frontBothBorders());
  if (wrong.length > 0) throw new KitError(wrong);
  return { value: seatOf(cells), placeOf: (path, key) => placeIn(columns, row, path, key), cellOf };
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
  const stated = { book: pick(OF_A_BOOK), fit: { ...fit, ...borders } };
  return {
    ...pick(["seat", "kit", "pace"]),
    ...Object.fromEntries(Object.entries(stated).filter(([, keys]) => Object.keys(keys).length > 0)),
  };
}

/** A cell as the front matter would state it, or undefined: a bare number is a length in mm, another text is left for the schema. */
function readCell(name: string, cell: string, { kits }: BooksTable): unknown {
  if (name === "plates") return readPlates(platesTyped(cell));
  if (name === "kit") return kitCalled(cell, kits) ?? cell;
  if (name === "direction" || name === "foldStyle") return cell.toLowerCase();
  const typed = withPoint(cell);
  return /^-?\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
}

/** `12,5` as `12.5`, as spreadsheets of many languages write it; after a comma that stands in a number only. */
function withPoint(cell: string): string {
  return cell.replace(/^(-?\d+),(\d+)(?![\d.,/])/, "$1.$2");
}

/** A spreadsheet takes `192:4` for a time: it saves it as `192:04:00`, or as a share of a day. */
function platesTyped(cell: string): string {
  if (!/^\d+\.\d{3,}$/.test(cell)) return cell.replace(/^(\d+:\d+):00$/, "$1");
  const minutes = Math.round(Number(cell) * 24 * 60);
  return `${Math.floor(minutes / 60)}:${minutes % 60}`;
}

/** A kit by its folder's name or its title, in any capitals. */
function kitCalled(cell: string, kits: readonly Kit[]): string | undefined {
  const called = cell.toLowerCase();
  return kits.find(({ slug, title }) => [slug, title.toLowerCase()].includes(called))?.slug;
}

/** The line, and the column of the table, from 1, that a field came from. */
function placeIn(
  columns: readonly string[],
  { line }: TableRow,
  path: readonly PropertyKey[],
  key: string | undefined,
): { line: number; column: number } {
  const named = [...path, ...(key === undefined ? [] : [key])].filter((step) => typeof step === "string");
  const border = path.includes("borderLeaves") ? (path.at(-1) === 1 ? "borderAfter" : "borderBefore") : undefined;
  const at = columns.indexOf(border ?? named.findLast((step) => columns.includes(step)) ?? "seat");
  return { line, column: at + 1 || 1 };
}
