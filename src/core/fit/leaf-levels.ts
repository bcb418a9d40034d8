import type { Columns } from "../picture/column.ts";
import { LeafSpans } from "../spans/leaf-spans.ts";

/** Where the picture sits on every leaf: mm from the head, and the leaf's whole height. */
export interface Placing {
  readonly head: number;
  readonly height: number;
  readonly leafHeight: number;
  readonly pictureHeight: number;
  readonly background: number;
}

/**
 * The exact spans of one leaf, filled into `leaf`. `x[k]` is the picture's x (picture units) where this leaf's level-(k+1) tip
 * is seen; those of all levels but the last are among the columns.
 * At each height the leaf gets the smallest level k whose own tip lies on a part of the picture of level ≤ k: at the latest the last.
 */
export function levelsOfLeaf(
  x: readonly number[],
  columns: Columns,
  placing: Placing,
  leaf = new LeafSpans(),
): LeafSpans {
  const { head, height, pictureHeight, background } = placing;
  const scale = height / pictureHeight;
  const at = x.slice(0, -1).map((one) => columns.starts[columns.at(one)]!);
  leaf.count = 0;
  leaf.add(head, background);
  for (let from = 0; from < pictureHeight; ) {
    const to = nextEnd(columns, at, from, pictureHeight);
    leaf.add(head + to * scale, firstLevelShown(columns, at));
    from = to;
  }
  leaf.add(placing.leafHeight, background);
  return leaf;
}

/** The nearest end of a run below a height. `at` comes to be the run of each column just below it; heights come in order, so it only moves on. */
function nextEnd({ ends }: Columns, at: number[], y: number, foot: number): number {
  let next = foot;
  for (let k = 0; k < at.length; k += 1) {
    let run = at[k]!;
    while (ends[run]! <= y) run += 1;
    at[k] = run;
    if (ends[run]! < next) next = ends[run]!;
  }
  return next;
}

function firstLevelShown({ levels }: Columns, at: readonly number[]): number {
  for (let k = 0; k < at.length; k += 1) if (levels[at[k]!]! <= k + 1) return k + 1;
  return at.length + 1;
}
