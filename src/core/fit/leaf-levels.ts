import type { ColumnReader } from "../picture/column.ts";
import { joinSpans, type Span } from "../spans/span.ts";

/** Where the picture sits on every leaf: mm from the head, and the leaf's whole height. */
export interface Placing {
  readonly head: number;
  readonly height: number;
  readonly leafHeight: number;
  readonly pictureHeight: number;
  readonly background: number;
}

/**
 * The exact spans of one leaf. `columns[k]` is the picture's x (picture units) where this leaf's level-(k+1) tip is seen.
 * At each height the leaf gets the smallest level k whose own tip lies on a part of the picture of level ≤ k.
 */
export function levelsOfLeaf(columns: readonly number[], read: ColumnReader, placing: Placing): Span[] {
  const scale = placing.height / placing.pictureHeight;
  const runs = columns.map((x) => read(x));
  const bounds = [...new Set(runs.flat().flatMap((run) => [run.from, run.to]))].sort((a, b) => a - b);
  const spans: Span[] = [{ from: 0, to: placing.head, level: placing.background }];
  for (let i = 0; i + 1 < bounds.length; i += 1) {
    const middle = (bounds[i]! + bounds[i + 1]!) / 2;
    const level = firstLevelShown(runs, middle);
    spans.push({ from: placing.head + bounds[i]! * scale, to: placing.head + bounds[i + 1]! * scale, level });
  }
  spans.push({ from: placing.head + placing.height, to: placing.leafHeight, level: placing.background });
  return joinSpans(spans);
}

function firstLevelShown(runs: readonly (readonly { from: number; to: number; level: number }[])[], y: number): number {
  for (let k = 0; k < runs.length; k += 1) {
    const run = runs[k]!.find((one) => y >= one.from && y < one.to);
    if (run && run.level <= k + 1) return k + 1;
  }
  return runs.length;
}
