import type { LeafNumber } from "./leaf-number.ts";
/** A closed book as its owner measures it. Lengths in mm. */
export interface Book {
  readonly leafHeight: number;
  /** Fore-edge to gutter, as far as the leaf can be used. */
  readonly leafWidth: number;
  /** All leaves pressed together, without the boards. */
  readonly blockThickness: number;
  /** Sheets, not pages: one leaf has two pages. */
  readonly leaves: number;
  /** The leaf whose recto is printed page 1. */
  readonly pageOneLeaf: LeafNumber;
  /** The last printed page number. */
  readonly lastPage: number;
  readonly plates: readonly Plate[];
  readonly direction: "ltr" | "rtl";
  /** How far a board stands beyond the leaves. */
  readonly square: number;
  readonly boardThickness: number;
}

/** Unnumbered leaves bound in after a printed page. */
export interface Plate {
  readonly afterPage: number;
  readonly leaves: number;
}

/** Thickness of one leaf in mm, T/N. */
export function caliper(book: Book): number {
  return book.blockThickness / book.leaves;
}

/** Outside this range of calipers (mm) the counts are almost always a mix-up of leaves and pages (common practice, no source). */
export const PLAUSIBLE_CALIPER: readonly [number, number] = [0.04, 0.3];
