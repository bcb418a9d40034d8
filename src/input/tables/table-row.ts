/** A row of a table as texts without spaces around them, and its places, from 1: the line of its file, and the row as spreadsheets number it. */
export interface TableRow {
  readonly cells: readonly string[];
  readonly line: number;
  readonly row: number;
}

/** A cell's name in a spreadsheet: `C4` for the third column, from 1, of row 4. */
export function cellName(column: number, row: number): string {
  let letters = "";
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26))
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return `${letters}${row}`;
}
