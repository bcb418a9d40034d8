import type { Book, Plate } from "./book.ts";

/** The last printed page where every leaf from page 1 on is numbered but the plates; below 1 where no leaf is left for a page. */
export function lastPageOf({ leaves, pageOneLeaf, plates }: Pick<Book, "leaves" | "pageOneLeaf" | "plates">): number {
  return 2 * (leaves - pageOneLeaf + 1 - plateLeaves(plates));
}

/** Unnumbered leaves between the pages. */
export function plateLeaves(plates: readonly Plate[]): number {
  return plates.reduce((sum, plate) => sum + plate.leaves, 0);
}
