import { columnsOf } from "../../../input/class/book-columns.ts";
import { KitError } from "../../../input/files/message.ts";
import { readDelimited } from "../../../input/tables/delimited.ts";
import type { CellChange } from "./desk-class.ts";
import type { SeatGrid } from "./seat-grid.ts";

/** A cell of the grid, by its row and its place among the columns that are shown. */
export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

/**
 * What a pasted text changes: rows below a head that names columns go to their seats by number, others are laid on the grid
 * from a cell on, rightwards and down. Rows beyond the last become new seats. Undefined where it is no table.
 */
export function pastedCells(
  text: string,
  at: GridPlace,
  {
    grid,
    columns,
    freeSeat,
  }: { readonly grid: SeatGrid; readonly columns: readonly string[]; readonly freeSeat: number },
): CellChange[] | undefined {
  const rows = rowsOf(text);
  if (!rows) return undefined;
  const named = headOf(rows[0]!);
  return named ? bySeat(rows.slice(1), named, grid, freeSeat) : fromCell(rows, at, { grid, columns, freeSeat });
}

/** Rows of texts; a spreadsheet parts its cells by tabs, and empty rows keep their place. */
function rowsOf(text: string): string[][] | undefined {
  try {
    const rows =
      text.includes("\t") && !text.includes('"')
        ? text
            .replace(/\r?\n$/, "")
            .split(/\r?\n/)
            .map((line) => line.split("\t").map((cell) => cell.trim()))
        : readDelimited("", text).map(({ cells }) => [...cells]);
    return rows.length > 0 ? rows : undefined;
  } catch (error) {
    if (error instanceof KitError) return undefined;
    throw error;
  }
}

/** The columns that a first row names; undefined where it is no head. */
function headOf(cells: readonly string[]): string[] | undefined {
  if (cells.every((cell) => !/\p{L}/u.test(cell))) return undefined;
  try {
    return columnsOf("", { cells, line: 1, row: 1 });
  } catch (error) {
    if (error instanceof KitError) return undefined;
    throw error;
  }
}

function bySeat(
  rows: readonly (readonly string[])[],
  named: readonly string[],
  { rows: seats }: SeatGrid,
  freeSeat: number,
): CellChange[] {
  const seatAt = named.indexOf("seat");
  let free = freeSeat;
  return rows.flatMap((cells) => {
    const given = cells[seatAt] ?? "";
    const place = seats.findIndex(({ number }) => String(number) === given);
    const isNumber = /^\d+$/.test(given);
    const row = place >= 0 ? place : { newSeat: isNumber ? Number(given) : free };
    if (place < 0 && !isNumber) free += 1;
    return named.flatMap((column, i): CellChange[] => {
      return column === "" || (column === "seat" && place >= 0) ? [] : [{ row, column, text: cells[i] ?? "" }];
    });
  });
}

function fromCell(
  rows: readonly (readonly string[])[],
  at: GridPlace,
  {
    grid,
    columns,
    freeSeat,
  }: { readonly grid: SeatGrid; readonly columns: readonly string[]; readonly freeSeat: number },
): CellChange[] {
  return rows.flatMap((cells, r) => {
    const beyond = at.row + r - grid.rows.length;
    const row = beyond < 0 ? at.row + r : { newSeat: freeSeat + beyond };
    return cells.flatMap((text, c): CellChange[] => {
      const column = columns[at.column + c];
      return column === undefined ? [] : [{ row, column, text }];
    });
  });
}
