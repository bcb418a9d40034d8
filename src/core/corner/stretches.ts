import type { Columns } from "../picture/column.ts";
import { LeafSpans } from "../spans/leaf-spans.ts";

/** Where the picture sits on every leaf, mm from the head, and what counts of it. */
export interface Silhouette {
  readonly head: number;
  readonly height: number;
  readonly leafHeight: number;
  readonly pictureHeight: number;
  /** Levels that are shown, by number. */
  readonly levels: readonly number[];
  /** The level of what is not shown. */
  readonly background: number;
}

/** The exact spans of one leaf from head to tail: what is shown is level 1, all else the background. The column at `x` (picture units) is the one under the leaf's unfolded fore-edge. */
export function silhouetteOf(x: number, { starts, ends, levels, at }: Columns, silhouette: Silhouette): LeafSpans {
  const { head, height, leafHeight, pictureHeight, background } = silhouette;
  const scale = height / pictureHeight;
  const leaf = new LeafSpans();
  leaf.add(head, background);
  const column = at(x);
  for (let run = starts[column]!; run < starts[column + 1]!; run += 1)
    leaf.add(head + ends[run]! * scale, silhouette.levels.includes(levels[run]!) ? 1 : background);
  leaf.add(leafHeight, background);
  return leaf;
}
