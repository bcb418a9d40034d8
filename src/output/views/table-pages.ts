import type { Row } from "./row.ts";

/** How a table is set: lengths in mm. */
export interface TableSetting {
  /** Room for rows on one page. */
  readonly height: number;
  /** Height of a row of one line, and of each further line. */
  readonly line: number;
  /** Padding of a row beside its lines. */
  readonly padding: number;
  readonly marksPerLine: number;
  readonly foldsPerLine: number;
}

/** The rows of one printed page, with the figures that let its reader check it. */
export interface TablePage {
  readonly rows: readonly PrintedRow[];
  /** Leaves and cuts on this page, and cuts up to and with it. */
  readonly leaves: number;
  readonly cuts: number;
  readonly cutsSoFar: number;
  readonly last: boolean;
}

export interface PrintedRow extends Row {
  /** Marks in lines of at most `marksPerLine`. */
  readonly markLines: readonly (readonly Row["marks"][number][])[];
  readonly foldLines: readonly (readonly number[])[];
  /** A heavier rule follows every fifth row of the whole table. */
  readonly ruled: boolean;
  /** Lines of its highest cell. */
  readonly lines: number;
  /** Height of the row, mm; print.css sets it from the lines. */
  readonly height: number;
}

/** Breaks a table into pages so that no row is split; heights follow from the marks, so nothing is left to the browser. */
export function tablePages(rows: readonly Row[], setting: TableSetting): TablePage[] {
  const pages: PrintedRow[][] = [];
  let used = Number.POSITIVE_INFINITY;
  rows.forEach((row, i) => {
    const printed = printRow(row, i, setting);
    if (used + printed.height > setting.height) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)!.push(printed);
    used += printed.height;
  });
  let cutsSoFar = 0;
  return pages.map((page, i) => {
    const cuts = page.reduce((sum, row) => sum + row.marks.length, 0);
    cutsSoFar += cuts;
    return { rows: page, leaves: page.length, cuts, cutsSoFar, last: i === pages.length - 1 };
  });
}

function printRow(row: Row, index: number, setting: TableSetting): PrintedRow {
  const markLines = chunk(row.marks, setting.marksPerLine);
  const foldLines = chunk(row.folds, setting.foldsPerLine);
  const lines = Math.max(Math.max(1, markLines.length) + (row.notch ? 1 : 0), foldLines.length);
  const height = setting.padding + lines * setting.line;
  return { ...row, markLines, foldLines, ruled: (index + 1) % 5 === 0, lines, height };
}

function chunk<T>(items: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) => items.slice(i * size, (i + 1) * size));
}
