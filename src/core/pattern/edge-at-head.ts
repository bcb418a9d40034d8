import type { Fan } from "../fan/fan.ts";
import { edgeWidth } from "../fan/front.ts";
import type { Level } from "../kit/kit.ts";
import type { PatternLeaf } from "./pattern.ts";

/** Folded edges of the picture's outer leaves at the head, straight, mm: the hold width. A lost leaf's place is taken by the next. */
export function edgeAtHead(fan: Fan, levels: readonly Level[], leaves: readonly PatternLeaf[]): number {
  const picture = leaves.filter((leaf) => leaf.patternPage !== null);
  const [first, last] = [picture[0]!, picture.at(-1)!];
  const depthOf = (leaf: PatternLeaf): number => levels[leaf.spans[0]!.level - 1]!.depth;
  return edgeWidth(fan, first.leaf - 1, depthOf(first), last.leaf - 1, depthOf(last));
}
