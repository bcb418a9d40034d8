import type { Box } from "./box.ts";
import type { Point } from "./point.ts";

/** A straight piece of a line. */
export type Side = readonly [Point, Point];

/** The straight pieces between a line's points. */
export function sidesOf(line: readonly Point[]): Side[] {
  return line.slice(1).map((to, i) => [line[i]!, to] as const);
}

/** Whether some of a side lies in a box: what is left of it between the box's four sides (Liang and Barsky's clipping). */
export function meetsBox([[ax, ay], [bx, by]]: Side, { left, top, right, bottom }: Box): boolean {
  const [dx, dy] = [bx - ax, by - ay];
  let [from, to] = [0, 1];
  for (const [speed, room] of [
    [-dx, ax - left],
    [dx, right - ax],
    [-dy, ay - top],
    [dy, bottom - ay],
  ] as const) {
    if (speed === 0 && room < 0) return false;
    if (speed < 0) from = Math.max(from, room / speed);
    if (speed > 0) to = Math.min(to, room / speed);
  }
  return from <= to;
}
