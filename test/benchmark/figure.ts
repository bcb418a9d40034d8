import { LINES, type LineId } from "./lines.ts";

/** What was measured for a line. */
export interface Figure {
  readonly line: LineId;
  readonly value: number;
  /** How long a turn of the yardstick took in the same run, ms: what a time means on any machine. */
  readonly yardstick?: number;
}

/** A time in turns of the yardstick; undefined where a figure is no time. */
export function turnsOf({ line, value, yardstick }: Figure): number | undefined {
  if (yardstick === undefined) return undefined;
  return (LINES[line].unit === "s" ? 1000 * value : value) / yardstick;
}

/** What two machines can be compared by: a time in turns of the yardstick, all else as it is. */
export function shareOf(figure: Figure): number {
  return turnsOf(figure) ?? figure.value;
}
