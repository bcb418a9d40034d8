import { CsvError, parse } from "csv-parse/sync";
import type { Plate } from "../../core/book/book.ts";
import { OF_A_BOOK } from "../../core/refit/refit.ts";
import type { Place } from "../files/front-matter.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import { FIT_COLUMNS } from "./schema.ts";

/** A row of the books table as the front matter would state it, with its place in the file. */
export interface BookRow {
  readonly value: Record<string, unknown>;
  readonly line: number;
  readonly placeOf: (path: readonly PropertyKey[]) => Place;
}

const COLUMNS: readonly string[] = ["seat", "kit", ...OF_A_BOOK, ...FIT_COLUMNS, "pace"];

/**
 * Reads a books table (CSV, RFC 4180, a head row with the columns' names; empty cells are left out). Spreadsheets that write
 * decimals with a comma part cells with semicolons: both are read.
 * @throws KitError when it is no table or has a column that is not known.
 */
export function readBooks(file: string, text: string): BookRow[] {
  const separator = separatorOf(text);
  const rows = parseTable(file, text, separator);
  const [head, ...body] = rows;
  if (!head) throw tableError(file, 1, "an empty file", `a head row with the columns ${COLUMNS.join(", ")}`);
  const unknown = head.record.find((name) => !COLUMNS.includes(name));
  if (unknown !== undefined)
    throw tableError(file, 1, `unknown column "${unknown}"`, `these columns, in any order: ${COLUMNS.join(", ")}`);
  const twice = head.record.find((name, i) => head.record.indexOf(name) !== i);
  if (twice !== undefined) throw tableError(file, 1, `two columns "${twice}"`, "each column once");
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
    throw tableError(
      file,
      Number(error["lines"] ?? 1),
      error.message,
      "cells parted by commas, a text that holds a comma or a quote in quotes",
    );
  }
}

function toRow(file: string, head: readonly string[], record: readonly string[], line: number): BookRow {
  const beyond = record.slice(head.length).find((cell) => cell !== "");
  if (beyond !== undefined)
    throw tableError(
      file,
      line,
      `"${beyond}" stands beyond the last column`,
      `${head.length} cells, as the head row has; a text with a comma in quotes`,
    );
  const cells = new Map(
    head.map((name, i) => [name, record[i] ?? ""]).filter(([, cell]) => cell !== "") as [string, string][],
  );
  const read = (name: string): unknown => {
    const cell = cells.get(name)!;
    if (name === "plates") {
      const plates = readPlates(cell);
      if (plates) return plates;
      throw tableError(
        file,
        line,
        `plates: "${cell}"`,
        "page:leaves, 192:4; 300:2 for four leaves after page 192 and two after page 300",
      );
    }
    // A bare number is a length in mm, as in the front matter; another text is left for the schema.
    return /^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell;
  };
  const pick = (names: readonly string[]): Record<string, unknown> =>
    Object.fromEntries(names.filter((name) => cells.has(name)).map((name) => [name, read(name)]));
  const { borderBefore, borderAfter, ...fit } = pick(FIT_COLUMNS);
  const borders = borderBefore !== undefined || borderAfter !== undefined;
  const value = {
    ...pick(["seat", "kit", "pace"]),
    book: pick(OF_A_BOOK),
    ...(Object.keys(fit).length > 0 || borders
      ? { fit: { ...fit, ...(borders ? { borderLeaves: [borderBefore, borderAfter] } : {}) } }
      : {}),
  };
  return { value, line, placeOf: (path) => ({ line, column: columnOf(head, path) }) };
}

/** `192:4; 240:2`, or as the measuring card writes it `192 × 4, 240 × 2`: four leaves after page 192 and two after page 240. */
function readPlates(cell: string): Plate[] | undefined {
  const plates = cell.split(/[;,]/).map((one) => /^\s*(\d+)\s*[:×x*]\s*(\d+)\s*$/i.exec(one));
  return plates.every((match) => match !== null)
    ? plates.map((match) => ({ afterPage: Number(match![1]), leaves: Number(match![2]) }))
    : undefined;
}

/** The column of the table, from 1, that a field came from. */
function columnOf(head: readonly string[], path: readonly PropertyKey[]): number {
  const named = path.filter((step) => typeof step === "string");
  const border = path.includes("borderLeaves") ? (path.at(-1) === 1 ? "borderAfter" : "borderBefore") : undefined;
  const at = head.indexOf(border ?? named.findLast((step) => head.includes(step)) ?? "");
  return at + 1 || 1;
}

function tableError(file: string, line: number, given: string, allowed: string): KitError {
  const message: KitMessage = {
    file,
    line,
    column: undefined,
    field: "books table",
    given,
    allowed,
    remedy: "correct the table here",
  };
  return new KitError([message]);
}
