/**
 * The spans of one leaf from the head, in order and gapless, as they are added: neighbours of the same level are joined, and
 * what has no length is dropped. Columns of figures, to be filled anew for each leaf.
 */
export class LeafSpans {
  count = 0;
  /** Where each span ends, mm from the head; it begins where the one before it ends. */
  ends = new Float64Array(64);
  levels = new Int32Array(64);

  /** Adds a span that begins where the last one ends. */
  add(to: number, level: number): void {
    const last = this.count - 1;
    if (to <= this.startOf(this.count)) return;
    if (last >= 0 && this.levels[last] === level) {
      this.ends[last] = to;
      return;
    }
    if (this.count === this.levels.length) this.#grow();
    this.ends[this.count] = to;
    this.levels[this.count] = level;
    this.count += 1;
  }

  /** Where a span begins, mm from the head. */
  startOf(span: number): number {
    return span === 0 ? 0 : this.ends[span - 1]!;
  }

  #grow(): void {
    const { ends, levels } = this;
    this.ends = new Float64Array(2 * ends.length);
    this.levels = new Int32Array(2 * levels.length);
    this.ends.set(ends);
    this.levels.set(levels);
  }
}
