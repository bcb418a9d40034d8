import { roomFor } from "../room-for.ts";

/**
 * The spans of one leaf from the head, in order and gapless, as they are added: neighbours of the same level are joined, and
 * what has no length is dropped. Columns of figures, to be filled anew for each leaf.
 */
export class LeafSpans {
  count = 0;
  /** Where each span ends, mm from the head; it begins where the one before it ends. */
  ends: Float64Array = new Float64Array(64);
  levels: Int32Array = new Int32Array(64);

  /** Adds a span that begins where the last one ends. */
  add(to: number, level: number): void {
    const { count } = this;
    if (to <= this.startOf(count)) return;
    if (count === this.levels.length) [this.ends, this.levels] = roomFor(2 * count, this.ends, this.levels);
    if (count === 0 || this.levels[count - 1] !== level) this.levels[this.count++] = level;
    this.ends[this.count - 1] = to;
  }

  /** Where a span begins, mm from the head. */
  startOf(span: number): number {
    return span === 0 ? 0 : this.ends[span - 1]!;
  }
}
