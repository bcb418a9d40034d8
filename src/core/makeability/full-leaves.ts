import type { LeafNumber } from "../book/leaf-number.ts";
import { type Pattern, pictureLeaves } from "../pattern/pattern.ts";
import type { PicturePlace } from "./picture-place.ts";

/** More cuts than this make a leaf a comb that is hard to fold and easily tears (common practice, no source). */
export const COMFORTABLE_CUTS = 8;

/** Neighbouring leaves with more cuts than is comfortable; x in mm from the fan's middle. */
export interface FullLeaves {
  readonly firstLeaf: LeafNumber;
  readonly lastLeaf: LeafNumber;
  readonly leaves: number;
  /** Cuts of the leaf that has most. */
  readonly most: number;
  readonly left: number;
  readonly right: number;
}

/** Leaves with more cuts than is comfortable, neighbours together, in book order. */
export function fullLeaves(pattern: Pattern, place: PicturePlace): FullLeaves[] {
  const groups: FullLeaves[] = [];
  for (const { leaf, cuts } of pictureLeaves(pattern)) {
    if (cuts.length <= COMFORTABLE_CUTS) continue;
    const last = groups.at(-1);
    const { left, right } = place.column(leaf);
    if (last?.lastLeaf === leaf - 1)
      groups[groups.length - 1] = {
        ...last,
        lastLeaf: leaf,
        leaves: last.leaves + 1,
        most: Math.max(last.most, cuts.length),
        left: Math.min(last.left, left),
        right: Math.max(last.right, right),
      };
    else groups.push({ firstLeaf: leaf, lastLeaf: leaf, leaves: 1, most: cuts.length, left, right });
  }
  return groups;
}
