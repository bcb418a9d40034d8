import type { Fan } from "../fan/fan.ts";
import { holdWidth } from "../fan/front.ts";
import type { Level } from "../kit/kit.ts";
import type { PatternLeaf } from "./pattern.ts";

/** Hold width of a pattern, mm: its outer picture leaves as they are folded at the head. A lost leaf's place is taken by the next. */
export function holdWidthOf(fan: Fan, levels: readonly Level[], leaves: readonly PatternLeaf[]): number {
  const picture = leaves.filter((leaf) => leaf.patternPage !== null);
  const [first, last] = [picture[0]!, picture.at(-1)!];
  const depthOf = (leaf: PatternLeaf): number => levels[leaf.spans[0]!.level - 1]!.depth;
  return holdWidth(fan, first.leaf - 1, depthOf(first), last.leaf - 1, depthOf(last));
}
