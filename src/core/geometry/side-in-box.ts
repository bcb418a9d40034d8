import type { Box } from "./box.ts";
import type { Point } from "./point.ts";

/** A straight piece of a line. */
export type Side = readonly [Point, Point];

/** The straight pieces between a line's points. */
export function sidesOf(line: readonly Point[]): Side[] {
  return line.slice(1).map((to, i) => [line[i]!, to] as const);
}

/** Whether some of a side lies in a box: what is left of it between the box's four sides (Liang and Barsky's clipping). */
export function meetsBox(side: Side, { left, top, right, bottom }: Box): boolean {
  const a = side[0];
  const b = side[1];
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  let from = 0;
  let to = 1;
  const isLeft = (speed: number, room: number): boolean => {
    if (speed < 0) from = Math.max(from, room / speed);
    if (speed > 0) to = Math.min(to, room / speed);
    return speed !== 0 || room >= 0;
  };
  return (
    isLeft(-dx, a[0] - left) &&
    isLeft(dx, right - a[0]) &&
    isLeft(-dy, a[1] - top) &&
    isLeft(dy, bottom - a[1]) &&
    from <= to
  );
}
