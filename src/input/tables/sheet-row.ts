/** A row of a spreadsheet, with the number that it has there, and its filled cells by their column, both from 1. */
export interface SheetRow {
  readonly row: number;
  readonly cells: ReadonlyMap<number, string>;
}
