import type { ColumnReader, ColumnRun } from "../picture/column.ts";
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
  const bounds = Float64Array.from(runs.flatMap((own) => own.flatMap((run) => [run.from, run.to]))).sort();
  const spans: Span[] = [{ from: 0, to: placing.head, level: placing.background }];
  const at = runs.map(() => 0);
  for (let i = 0; i + 1 < bounds.length; i += 1) {
    const [from, to] = [bounds[i]!, bounds[i + 1]!];
    if (from === to) continue;
    const level = firstLevelShown(runs, at, (from + to) / 2);
    spans.push({ from: placing.head + from * scale, to: placing.head + to * scale, level });
  }
  spans.push({ from: placing.head + placing.height, to: placing.leafHeight, level: placing.background });
  return joinSpans(spans);
}

/** `at` is the run of each column that the last height was in; heights come in order, so it only moves on. */
function firstLevelShown(runs: readonly (readonly ColumnRun[])[], at: number[], y: number): number {
  for (let k = 0; k < runs.length; k += 1) {
    const own = runs[k]!;
    while (at[k]! < own.length && own[at[k]!]!.to <= y) at[k]! += 1;
    const run = own[at[k]!];
    if (run && run.from <= y && run.level <= k + 1) return k + 1;
  }
  return runs.length;
}
