import { readDelimited, separatorOf, statedSeparator } from "./delimited.ts";

/** A cell of a table, by its row among those that hold a text and its column, both from 0, and what it is to hold. */
export interface CellEdit {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/**
 * A table as text with other texts in some cells, or with more rows: all others stay as they are written, with their
 * separators, quotes and line ends. A row behind the last is a new one; a row that ends before a cell is filled up.
 * @throws KitError where the table cannot be read
 */
export function editDelimited(file: string, text: string, edits: readonly CellEdit[]): string {
  return edits.reduce((edited, edit) => withCell(file, edited, edit), text);
}

function withCell(file: string, text: string, { row, column, text: cell }: CellEdit): string {
  const rows = readDelimited(file, text);
  const stated = statedSeparator(text);
  const begin = stated?.length ?? 0;
  const separator = stated?.separator ?? separatorOf(text);
  const wanted = withText(rows[row]?.cells ?? [], column, cell);
  if (row >= rows.length) return withRow(text, wanted, separator);
  const records = recordsIn(text.slice(begin), separator).filter(({ cells }) =>
    cells.some(({ from, to }) => plain(text.slice(begin + from, begin + to)) !== ""),
  );
  const record = records[row];
  if (record && records.length === rows.length) {
    const edited = inRecord(text, { begin, record, separator }, column, cell);
    if (holds(readDelimited(file, edited), rows, row, wanted)) return edited;
  }
  return writtenAnew(text, rows.map(({ cells }) => cells).with(row, wanted), separator);
}

function withText(cells: readonly string[], column: number, text: string): string[] {
  const made = Array.from({ length: Math.max(cells.length, column + 1) }, (_, i) => cells[i] ?? "");
  return made.with(column, text.trim());
}

/** Whether rows are as before but for one. Empty cells at the end of a row do not count. */
function holds(
  now: readonly { readonly cells: readonly string[] }[],
  before: readonly { readonly cells: readonly string[] }[],
  row: number,
  wanted: readonly string[],
): boolean {
  const isEmpty = wanted.every((cell) => cell === "");
  const rows = isEmpty ? before.toSpliced(row, 1) : before.with(row, { cells: wanted } as (typeof before)[number]);
  return now.length === rows.length && rows.every(({ cells }, i) => trimmed(cells) === trimmed(now[i]!.cells));
}

function trimmed(cells: readonly string[]): string {
  return JSON.stringify(cells.slice(0, cells.findLastIndex((cell) => cell !== "") + 1));
}

interface Cell {
  readonly from: number;
  readonly to: number;
}

/** A row of a table, by the offsets of its cells. */
interface TextRecord {
  readonly cells: readonly Cell[];
}

interface Found {
  readonly begin: number;
  readonly record: TextRecord;
  readonly separator: string;
}

function inRecord(text: string, { begin, record, separator }: Found, column: number, cell: string): string {
  const found = record.cells[column];
  if (!found) {
    const end = begin + record.cells.at(-1)!.to;
    const gap = separator.repeat(column - record.cells.length + 1);
    return text.slice(0, end) + gap + written(cell, separator) + text.slice(end);
  }
  const was = text.slice(begin + found.from, begin + found.to);
  const [, before, inside, behind] = /^(\s*)([\s\S]*?)(\s*)$/.exec(was) as unknown as [string, string, string, string];
  const isQuoted = inside.startsWith('"') && cell !== "";
  const put = before + (isQuoted ? quoted(cell) : written(cell, separator)) + behind;
  return text.slice(0, begin + found.from) + put + text.slice(begin + found.to);
}

/** The rows of a table by RFC 4180: a quote counts where a cell begins with it. */
function recordsIn(text: string, separator: string): TextRecord[] {
  const records: TextRecord[] = [];
  let cells: Cell[] = [];
  let from = text.startsWith("\ufeff") ? 1 : 0;
  let isQuoted = false;
  for (let i = from; i <= text.length; i += 1) {
    const sign = text[i];
    if (isQuoted && sign !== undefined) {
      if (sign !== '"') continue;
      if (text[i + 1] === '"') i += 1;
      else isQuoted = false;
    } else if (sign === '"' && text.slice(from, i).trim() === "") isQuoted = true;
    else if (sign === separator || sign === "\n" || sign === "\r" || sign === undefined) {
      cells.push({ from, to: i });
      if (sign === "\r" && text[i + 1] === "\n") i += 1;
      if (sign !== separator) {
        records.push({ cells });
        cells = [];
      }
      from = i + 1;
    }
  }
  return records;
}

function plain(cell: string): string {
  return cell
    .trim()
    .replace(/^"([\s\S]*)"$/, "$1")
    .trim();
}

function withRow(text: string, cells: readonly string[], separator: string): string {
  const eol = lineEndIn(text);
  const line = cells.map((cell) => written(cell, separator)).join(separator);
  const body = text.replace(/[\r\n \t]*$/, "");
  const end = /\r?\n|\r/.test(text.slice(body.length)) ? eol : "";
  return body === "" ? line + eol : body + eol + line + end;
}

function writtenAnew(text: string, rows: readonly (readonly string[])[], separator: string): string {
  const eol = lineEndIn(text);
  const head = text.slice(0, statedSeparator(text)?.length ?? 0);
  return head + rows.map((cells) => cells.map((cell) => written(cell, separator)).join(separator) + eol).join("");
}

function lineEndIn(text: string): string {
  return /\r\n|\n|\r/.exec(text)?.[0] ?? "\n";
}

/** A cell as RFC 4180 writes it: in quotes where it must be. */
function written(cell: string, separator: string): string {
  return cell.includes(separator) || /["\r\n]|^\s|\s$/.test(cell) ? quoted(cell) : cell;
}

function quoted(cell: string): string {
  return `"${cell.replaceAll('"', '""')}"`;
}

/** A table as text of its rows, parted by commas. */
export function delimitedText(rows: readonly (readonly string[])[]): string {
  return rows.map((cells) => `${cells.map((cell) => written(cell, ",")).join(",")}\n`).join("");
}
