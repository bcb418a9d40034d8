/** The levels along several upright lines: the runs of line i are those from `starts[i]` to `starts[i + 1]`, gapless from 0 to the picture's height. */
export interface Runs {
  readonly starts: Int32Array;
  /** Where each run ends, picture units from the top of the box. */
  readonly ends: Float64Array;
  readonly levels: Int32Array;
}

/** Takes runs down, line after line. */
export class RunList implements Runs {
  readonly starts: Int32Array;
  ends = new Float64Array(8);
  levels = new Int32Array(8);
  #line = 0;
  #count = 0;

  constructor(lines: number) {
    this.starts = new Int32Array(lines + 1);
  }

  /** Goes on down the line; what follows at the same level is one run. */
  add(to: number, level: number): void {
    if (this.#count === this.starts[this.#line] || this.levels[this.#count - 1] !== level) {
      if (this.#count === this.ends.length) this.#grow();
      this.levels[this.#count] = level;
      this.#count += 1;
    }
    this.ends[this.#count - 1] = to;
  }

  endLine(): void {
    this.#line += 1;
    this.starts[this.#line] = this.#count;
  }

  #grow(): void {
    const [ends, levels] = [new Float64Array(2 * this.#count), new Int32Array(2 * this.#count)];
    ends.set(this.ends);
    levels.set(this.levels);
    [this.ends, this.levels] = [ends, levels];
  }
}
