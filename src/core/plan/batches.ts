import { caliper } from "../book/book.ts";
import { type PatternBase, type PatternLeaf, type PatternLeafBase, pictureLeaves } from "../pattern/pattern.ts";

/** A sitting's worth of picture leaves. */
export interface Batch<Leaf extends PatternLeafBase = PatternLeaf> {
  readonly number: number;
  readonly first: Leaf;
  readonly last: Leaf;
  readonly count: number;
  /** How far the working side has sunk at the batch's first leaf, mm: one caliper for each leaf turned. */
  readonly packing: number;
  /** The same in the maker's own tiles, or undefined. */
  readonly tiles: number | undefined;
}

/** Splits the picture leaves into batches of at most `most`, as even as they can be. Working in batches of 15 to 20 is common practice, no source. */
export function batchesOf<Leaf extends PatternLeafBase>(
  pattern: Pick<PatternBase, "book"> & { readonly leaves: readonly Leaf[] },
  most: number,
  tile: number | undefined,
): Batch<Leaf>[] {
  const leaves = pictureLeaves(pattern);
  const total = Math.ceil(leaves.length / most);
  return Array.from({ length: total }, (_, i) => {
    const part = leaves.slice(Math.round((i * leaves.length) / total), Math.round(((i + 1) * leaves.length) / total));
    const first = part[0]!;
    const packing = (first.leaf - 1) * caliper(pattern.book);
    return {
      number: i + 1,
      first,
      last: part.at(-1)!,
      count: part.length,
      packing,
      tiles: tile === undefined ? undefined : Math.round(packing / tile),
    };
  });
}

/** Every tenth picture leaf: compare its page number and first mark before going on. */
export function isCheckpoint(leaf: PatternLeafBase): boolean {
  return leaf.patternPage !== null && ((leaf.patternPage + 1) / 2) % 10 === 0;
}
