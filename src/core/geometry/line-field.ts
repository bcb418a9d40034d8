import type { Box } from "./box.ts";
import type { Point } from "./point.ts";
import { meetsBox, type Side, sidesOf } from "./side-in-box.ts";

/** Side of a cell of the field, mm. */
const CELL = 4;

/** Many lines, asked again and again what lies in a box: their straight pieces by cells of a grid. */
export class LineField {
  readonly #cells = new Map<number, Side[]>();

  constructor(lines: readonly (readonly Point[])[] = []) {
    for (const line of lines) this.add(line);
  }

  add(line: readonly Point[]): void {
    for (const side of sidesOf(line)) {
      const [[ax, ay], [bx, by]] = side;
      const box = { left: Math.min(ax, bx), top: Math.min(ay, by), right: Math.max(ax, bx), bottom: Math.max(ay, by) };
      for (const cell of cellsOf(box)) {
        const own = this.#cells.get(cell);
        if (own) own.push(side);
        else this.#cells.set(cell, [side]);
      }
    }
  }

  /** Whether some of a line lies in a box. */
  meets(box: Box): boolean {
    return cellsOf(box).some((cell) => this.#cells.get(cell)?.some((side) => meetsBox(side, box)) ?? false);
  }
}

/** More cells than any field has across. */
const ROW = 1_000_000;

function cellsOf({ left, top, right, bottom }: Box): number[] {
  const cells: number[] = [];
  for (let y = Math.floor(top / CELL); y <= Math.floor(bottom / CELL); y += 1)
    for (let x = Math.floor(left / CELL); x <= Math.floor(right / CELL); x += 1) cells.push(y * ROW + x);
  return cells;
}
