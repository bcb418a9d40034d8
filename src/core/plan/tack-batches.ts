import type { Pattern } from "../pattern/pattern.ts";
import { batchesOf } from "./batches.ts";
import { tackList } from "./tack-list.ts";

/** In how many batches of at most `most` picture leaves a flap is tacked; one of a border leaf comes in the batch beside it. */
export function tackBatches(pattern: Pattern, most: number): number {
  const batches = batchesOf(pattern, most, undefined);
  const ends = batches.slice(0, -1).map(({ last }) => last.leaf);
  return new Set(tackList(pattern).glued.map(({ leaf }) => ends.filter((end) => leaf.leaf > end).length)).size;
}
