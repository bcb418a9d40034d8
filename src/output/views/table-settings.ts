import type { Row } from "./row.ts";
import type { TableSetting } from "./table-pages.ts";

/** Marks to a line by the longest mark's letters, widest first: as many columns as print.css sets for that number (`cells-n`). */
const NORMAL = [
  { letters: 8, marks: 6 },
  { letters: 10, marks: 5 },
  { letters: 13, marks: 4 },
] as const;
const LARGE = [{ letters: 9, marks: 3 }] as const;

/** Letters of what stands above and below a table on each of its sheets. */
export interface TableWords {
  readonly above: number;
  readonly below: number;
}

/** Lines that a table's sheet has room for besides its rows: letters that surely fit a line, the lines, and a line's height, mm. */
interface Room {
  readonly letters: number;
  readonly lines: number;
  readonly height: number;
}

/** The packet's table: about thirty leaves a page, generous enough to tick off by hand. */
export function packetTableSetting(rows: readonly Row[], words: TableWords): TableSetting {
  const more =
    further(words.above, { letters: 112, lines: 2, height: 4.1 }) +
    further(words.below, { letters: 105, lines: 1, height: 4.5 });
  return { height: 207 - more, line: 4.6, padding: 2.2, marksPerLine: marksFor(rows, NORMAL, 3), foldsPerLine: 9 };
}

/** The large-print table: one and a half times the type. */
export function largeTableSetting(rows: readonly Row[], words: TableWords): TableSetting {
  const more =
    further(words.above, { letters: 85, lines: 2, height: 5.3 }) +
    further(words.below, { letters: 80, lines: 2, height: 5.3 });
  return { height: 203 - more, line: 7.2, padding: 3, marksPerLine: marksFor(rows, LARGE, 2), foldsPerLine: 5 };
}

/** Height of the lines that words need beyond those that there is room for, mm. */
function further(letters: number, room: Room): number {
  return Math.max(0, Math.ceil(letters / room.letters) - room.lines) * room.height;
}

function marksFor(rows: readonly Row[], widths: readonly { letters: number; marks: number }[], fewest: number): number {
  const longest = Math.max(0, ...rows.flatMap((row) => row.marks.map((mark) => mark.at.length + 1 + mark.cut.length)));
  return widths.find((width) => longest <= width.letters)?.marks ?? fewest;
}
