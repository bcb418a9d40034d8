import { doItem, undoItem } from "./item-done.ts";
import type { Place } from "./places.ts";
import { type Progress, tickLeaf, untickLeaf } from "./progress.ts";

/** Ticks what lies on the bench. */
export function tickPlace(progress: Progress, { leaf, item }: Place): Progress {
  return item ? doItem(progress, item) : tickLeaf(progress, leaf);
}

/** Takes its tick off again. */
export function untickPlace(progress: Progress, { leaf, item }: Place): Progress {
  return item ? undoItem(progress, item) : untickLeaf(progress, leaf);
}
