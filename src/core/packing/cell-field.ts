import type { CellMask } from "./cell-mask.ts";

/** A place on a field, in cells. */
export interface CellSpot {
  readonly x: number;
  readonly y: number;
}

/** A field of cells, some of them taken. */
export class CellField {
  readonly #columns: number;
  /** For each cell of a row the last taken one up to it; -1 where there is none. */
  readonly #lastTaken: readonly Int16Array[];

  constructor(columns: number, rows: number) {
    this.#columns = columns;
    this.#lastTaken = Array.from({ length: rows }, () => new Int16Array(columns).fill(-1));
  }

  /** The uppermost place, and there the one most to the left, at which a mask covers nothing that is taken; at `most` at the farthest. */
  placeOf(mask: CellMask, most: CellSpot): CellSpot | undefined {
    for (let y = 0; y <= most.y; y += 1)
      for (let x = 0; x <= most.x; ) {
        const step = this.#past(mask, x, y);
        if (step === 0) return { x, y };
        x += step;
      }
    return undefined;
  }

  /** Takes a mask's cells and so many round each. */
  take({ rows }: CellMask, { x, y }: CellSpot, round: number): void {
    for (const [i, runs] of rows.entries())
      for (let at = Math.max(0, y + i - round); at <= Math.min(this.#lastTaken.length - 1, y + i + round); at += 1)
        for (const { from, to } of runs) this.#takeRun(at, Math.max(0, x + from - round), x + to + round);
  }

  #takeRun(row: number, from: number, to: number): void {
    const last = this.#lastTaken[row]!;
    const end = Math.min(this.#columns, to);
    for (let at = from; at < end; at += 1) last[at] = at;
    for (let at = end; at < this.#columns && last[at]! < end - 1; at += 1) last[at] = end - 1;
  }

  /** How far a mask must move to the right past a taken cell that it would cover; 0 where it covers none. */
  #past({ rows }: CellMask, x: number, y: number): number {
    for (const [i, runs] of rows.entries()) {
      const last = this.#lastTaken[y + i]!;
      for (const { from, to } of runs) {
        const taken = last[x + to - 1]!;
        if (taken >= x + from) return taken - x - from + 1;
      }
    }
    return 0;
  }
}
