import { CsvError, parse } from "csv-parse/browser/esm/sync";
import * as say from "../../words/messages.ts";
import { tableError } from "./table-error.ts";
import type { TableRow } from "./table-row.ts";

/** A first line that tells spreadsheets what parts the cells. */
const STATED = /^[ \t]*"?sep=([;,\t|])"?[ \t]*(?:\r\n|\n|\r|$)/i;

/**
 * Reads a table as text (CSV, RFC 4180), as spreadsheets and people write it: cells parted by commas, semicolons or tabs,
 * also as a line `sep=;` states, and marks of inches inside a cell. Rows without a text are left out.
 * @throws KitError where quotes do not end
 */
export function readDelimited(file: string, text: string): TableRow[] {
  const stated = statedSeparator(text);
  const table = text.slice(stated?.length ?? 0);
  const above = stated ? 1 : 0;
  const records = parseTable(file, table, stated?.separator ?? separatorOf(table), above);
  return records
    .map(({ record, info }, i) => ({ cells: record, line: info.lines + above, row: i + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
}

/** What a first line states that parts the cells, and how long this line is; undefined where there is none. */
export function statedSeparator(text: string): { readonly separator: string; readonly length: number } | undefined {
  const stated = STATED.exec(text);
  return stated ? { separator: stated[1]!, length: stated[0].length } : undefined;
}

/** What parts the head row's cells. */
export function separatorOf(text: string): string {
  const head = text.trimStart().split(/[\r\n]/, 1)[0]!;
  return [";", "\t"].find((sign) => head.includes(sign)) ?? ",";
}

interface Parsed {
  readonly record: string[];
  readonly info: { readonly lines: number };
}

function parseTable(file: string, text: string, separator: string, above: number): Parsed[] {
  try {
    return parse(text, {
      delimiter: separator,
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      relax_quotes: true,
      bom: true,
      trim: true,
      info: true,
    }) as unknown as Parsed[];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw tableError(file, Number(error["lines"] ?? 1) + above, error.message, say.frontCellsApart());
  }
}
