import { countBelow } from "../geometry/count-below.ts";
import type { Kit } from "../kit/kit.ts";
import type { Face } from "../pattern/face.ts";
import { pictureColumns } from "../pattern/fold.ts";

/** Where in the picture each level's folded edges stand, in order, picture units; lost leaves have none. */
export function tipsOnPicture(kit: Kit, face: Face): number[][] {
  const { first, count } = face.range;
  const standing = Array.from({ length: count }, (_, i) => first + i).filter(
    (j) => !kit.fit.lostLeaves.some((leaf) => leaf === j + 1),
  );
  const columns = standing.map((j) => pictureColumns(kit, face, j));
  return kit.levels.map((_, k) => columns.map((column) => column[k]!).toSorted((a, b) => a - b));
}

/** How many of some tips lie between two places. */
export function tipsWithin(tips: readonly number[], from: number, to: number): number {
  return countBelow(tips, to) - countBelow(tips, from);
}
