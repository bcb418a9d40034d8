import type { Row } from "./row.ts";
import type { TableSetting } from "./table-pages.ts";

/** Marks to a line by the longest mark's letters, widest first: as many columns as print.css sets for that number (`cells-n`). */
const NORMAL = [
  { letters: 8, marks: 6 },
  { letters: 10, marks: 5 },
  { letters: 13, marks: 4 },
] as const;
const LARGE = [{ letters: 9, marks: 3 }] as const;

/** The packet's table: about thirty leaves a page, generous enough to tick off by hand. */
export function packetTableSetting(rows: readonly Row[]): TableSetting {
  return { height: 207, line: 4.6, padding: 2.2, marksPerLine: marksFor(rows, NORMAL, 3), foldsPerLine: 9 };
}

/** The large-print table: one and a half times the type. */
export function largeTableSetting(rows: readonly Row[]): TableSetting {
  return { height: 203, line: 7.2, padding: 3, marksPerLine: marksFor(rows, LARGE, 2), foldsPerLine: 5 };
}

function marksFor(rows: readonly Row[], widths: readonly { letters: number; marks: number }[], fewest: number): number {
  const longest = Math.max(0, ...rows.flatMap((row) => row.marks.map((mark) => mark.at.length + 1 + mark.cut.length)));
  return widths.find((width) => longest <= width.letters)?.marks ?? fewest;
}
