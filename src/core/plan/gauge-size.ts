import type { Kit } from "../kit/kit.ts";

/** Beyond the deepest line the card goes on this far, mm, so that it can be held. */
const GRIP = 14;

/** A gauge is printed on one sheet, so it is at most this high, mm. */
const MOST_HEIGHT = 203;

/** Width and height of a kit's gauge, mm. */
export function gaugeSize(kit: Kit): { readonly width: number; readonly height: number } {
  const depths = [...kit.gaugeLines, ...kit.levels.map((level) => level.depth)];
  return { width: Math.max(...depths) + GRIP, height: Math.min(MOST_HEIGHT, kit.book.leafHeight) };
}
