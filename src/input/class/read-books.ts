import { CsvError, parse } from "csv-parse/sync";
import { readPlates } from "../../core/book/plates.ts";
import { OF_A_BOOK } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";
import { KitError } from "../files/message.ts";
import type { YamlFile } from "../files/yaml.ts";
import { BOOK_COLUMNS, FIT_COLUMNS } from "./schema-seat.ts";

/** A row of the books table as the front matter would state it, with its place in the file. */
export interface BookRow extends YamlFile {
  readonly value: Record<string, unknown>;
}

const COLUMNS: readonly string[] = Object.keys(BOOK_COLUMNS);

/**
 * Reads a books table (CSV, RFC 4180, a head row with the columns' names; empty cells are left out). Spreadsheets that write
 * decimals with a comma part cells with semicolons: both are read.
 * @throws KitError when it is no table or has a column that is not known.
 */
export function readBooks(file: string, text: string): BookRow[] {
  const separator = separatorOf(text);
  const rows = parseTable(file, text, separator);
  const [head, ...body] = rows;
  const columns = COLUMNS.join(", ");
  if (!head) throw tableError(file, 1, say.frontTableEmpty(), say.frontTableHead({ columns }));
  const unknown = head.record.find((name) => !COLUMNS.includes(name));
  if (unknown !== undefined)
    throw tableError(file, 1, say.frontColumnUnknown({ column: unknown }), say.frontColumns({ columns }));
  const twice = head.record.find((name, i) => head.record.indexOf(name) !== i);
  if (twice !== undefined) throw tableError(file, 1, say.frontColumnTwice({ column: twice }), say.frontColumnOnce());
  return body.map(({ record, line }) =>
    toRow(file, head.record, separator === ";" ? record.map(withPoint) : record, line),
  );
}

interface Parsed {
  readonly record: readonly string[];
  readonly line: number;
}

/** What parts the head row's cells. */
function separatorOf(text: string): string {
  const head = text.trimStart().split("\n", 1)[0]!;
  return [";", "\t"].find((sign) => head.includes(sign)) ?? ",";
}

/** `12,5` as `12.5`. */
function withPoint(cell: string): string {
  return cell.replace(/^(-?\d+),(\d+)(?=$|\s)/, "$1.$2");
}

function parseTable(file: string, text: string, separator: string): Parsed[] {
  try {
    const parsed = parse(text, {
      delimiter: separator,
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      skip_records_with_empty_values: true,
      bom: true,
      trim: true,
      skip_empty_lines: true,
      info: true,
    }) as unknown as {
      record: string[];
      info: { lines: number };
    }[];
    return parsed.map(({ record, info }) => ({ record, line: info.lines }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw tableError(file, Number(error["lines"] ?? 1), error.message, say.frontCellsApart());
  }
}

function toRow(file: string, head: readonly string[], record: readonly string[], line: number): BookRow {
  const beyond = record.slice(head.length).find((cell) => cell !== "");
  if (beyond !== undefined)
    throw tableError(file, line, say.frontCellBeyond({ cell: beyond }), say.frontCells({ count: head.length }));
  const cells = new Map(head.map((name, i) => [name, record[i] ?? ""] as const).filter(([, cell]) => cell !== ""));
  const pick = (names: readonly string[]): Record<string, unknown> =>
    Object.fromEntries(
      names.filter((name) => cells.has(name)).map((name) => [name, readCell(name, cells.get(name)!, file, line)]),
    );
  const { borderBefore, borderAfter, ...fit } = pick(FIT_COLUMNS);
  const borders = borderBefore !== undefined || borderAfter !== undefined;
  if (borders && (borderBefore === undefined || borderAfter === undefined)) {
    const [given, missing] =
      borderBefore === undefined ? ["borderAfter", "borderBefore"] : ["borderBefore", "borderAfter"];
    throw tableError(file, line, say.frontBorderAlone({ given, missing }), say.frontBothBorders());
  }
  const value = {
    ...pick(["seat", "kit", "pace"]),
    book: pick(OF_A_BOOK),
    ...(Object.keys(fit).length > 0 || borders
      ? { fit: { ...fit, ...(borders ? { borderLeaves: [borderBefore, borderAfter] } : {}) } }
      : {}),
  };
  return {
    value,
    placeOf: (path, key) => ({ line, column: columnOf(head, key === undefined ? path : [...path, key]) }),
  };
}

/** A bare number is a length in mm, as in the front matter; another text is left for the schema. */
function readCell(name: string, cell: string, file: string, line: number): unknown {
  if (name !== "plates") return /^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell;
  const plates = readPlates(cell);
  if (plates) return plates;
  throw tableError(file, line, say.frontPlatesCell({ cell }), say.frontPlatesForm());
}

/** The column of the table, from 1, that a field came from. */
function columnOf(head: readonly string[], path: readonly PropertyKey[]): number {
  const named = path.filter((step) => typeof step === "string");
  const border = path.includes("borderLeaves") ? (path.at(-1) === 1 ? "borderAfter" : "borderBefore") : undefined;
  const at = head.indexOf(border ?? named.findLast((step) => head.includes(step)) ?? "");
  return at + 1 || 1;
}

function tableError(file: string, line: number, given: string, allowed: string): KitError {
  const field = say.checkFieldBooks();
  return new KitError([{ file, line, column: undefined, field, given, allowed, remedy: say.frontCorrectTable() }]);
}
