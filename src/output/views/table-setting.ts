import { MM_PER_INCH } from "../../core/units/length.ts";
import type { Row } from "./row.ts";

/** The printed table's sizes: beside the packet's words, alone for weak eyes, and alone in two columns. */
export type TableSize = "normal" | "large" | "compact";

/** A size as print.css sets it: figures in points; the room for folds and marks, without notches and with them, and what each pair needs beside its figures, mm. */
interface Setting {
  readonly points: number;
  readonly room: number;
  readonly notched: number;
  readonly beside: number;
}

const SETTINGS: Readonly<Record<TableSize, Setting>> = {
  normal: { points: 9, room: 148, notched: 133, beside: 6 },
  large: { points: 18, room: 116, notched: 87, beside: 10.5 },
  compact: { points: 9, room: 65, notched: 52, beside: 5 },
};

/** A point of type, mm. */
const POINT = MM_PER_INCH / 72;

/** Width of a mark with its cut as a share of the figures' height: digits are half as wide, the signs between them less. */
const FIGURE = 0.44;

/** Most marks to a line that print.css has columns for. */
const MOST = 9;

/** How many marks a line of a table has room for: with the notches' column beside it, or without. The style sheet breaks lines by it. */
export function marksPerLine(rows: readonly Row[], size: TableSize): (notched: boolean) => number {
  const { points, room, notched, beside: around } = SETTINGS[size];
  const letters = Math.max(1, ...rows.flatMap((row) => row.marks.map(({ at, cut }) => at.length + 1 + cut.length)));
  const pair = letters * FIGURE * points * POINT + around;
  return (beside) => Math.min(MOST, Math.max(1, Math.floor((beside ? notched : room) / pair)));
}
