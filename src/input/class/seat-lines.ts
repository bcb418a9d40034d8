import { ROW_COLUMNS } from "../../core/class/seat-row.ts";
import type { TableRow } from "../tables/table-row.ts";

/** A row of a books table with what its cells are, by the names of columns. */
export interface NamedRow extends TableRow {
  readonly columns: readonly string[];
  /** Whether all of it stands in the first cell. */
  readonly inOneCell: boolean;
}

/** Whether a table has no head row: then its rows are lines as a class's page writes them, pasted or scanned. */
export function areLines([first]: readonly TableRow[]): boolean {
  return first !== undefined && isLine(unfolded(first));
}

/** A row under the columns of its table; a line that was pasted into one cell is under those of a line. */
export function namedRow(row: TableRow, columns: readonly string[]): NamedRow {
  const cells = unfolded(row);
  const inOneCell = cells !== row.cells;
  return { ...row, cells, columns: inOneCell ? ROW_COLUMNS : columns, inOneCell };
}

/** A line's cells, where a spreadsheet took it for one; else the row's own. */
function unfolded({ cells }: TableRow): readonly string[] {
  const filled = cells.filter((cell) => cell !== "");
  const line = filled.length === 1 && filled[0] === cells[0] ? filled[0]!.split(",").map((cell) => cell.trim()) : [];
  return isLine(line) ? line : cells;
}

/** A seat's number and the name of a kit stand first. */
function isLine(cells: readonly string[]): boolean {
  return cells.length > 2 && cells.length <= ROW_COLUMNS.length && /^\d+$/.test(cells[0]!) && !/^\d/.test(cells[1]!);
}
