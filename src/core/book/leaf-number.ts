declare const LEAF: unique symbol;

/**
 * The number of a leaf in its book, counted from 1: never a page, a count of leaves, or the place in a fan, which counts
 * from 0.
 */
export type LeafNumber = number & { readonly [LEAF]: true };

/** The number of a leaf that was counted from 1. */
export function leafNumber(counted: number): LeafNumber {
  return counted as LeafNumber;
}
