import type { Book } from "./book.ts";
import { type LeafNumber, leafNumber } from "./leaf-number.ts";

/** What a leaf says of itself: its two printed pages, or which unnumbered leaf it is. */
export type LeafName =
  | { readonly kind: "numbered"; readonly recto: number; readonly verso: number | null }
  | { readonly kind: "front"; readonly index: number; readonly of: number }
  | { readonly kind: "plate"; readonly index: number; readonly of: number; readonly afterPage: number }
  | { readonly kind: "end"; readonly index: number; readonly of: number };

/** Both maps between the leaves of one book and its printed pages. Leaves count from 1. */
export interface Numbering {
  /** Every leaf from 1 to `book.leaves` has a name. @throws RangeError for another leaf. */
  readonly nameOf: (leaf: LeafNumber) => LeafName;
  /** The leaf that carries a printed page, recto or verso; undefined where no leaf does. */
  readonly leafOf: (page: number) => LeafNumber | undefined;
  /** Leaves needed to carry `pageOneLeaf`, `lastPage` and the plates; more than `book.leaves` means the figures disagree. */
  readonly leavesNeeded: number;
}

/**
 * Leaf L has printed recto 2(L − a) + 1 where no plates come before; a plate has no number and later leaves count that many less.
 * A leaf is two pages, recto first (AACR2 glossary, "Leaf"; Getty AAT, "folios").
 */
export function numberLeaves(book: Book): Numbering {
  const names: LeafName[] = [];
  const leafOfPage = new Map<number, LeafNumber>();
  const front = book.pageOneLeaf - 1;
  for (let index = 1; index <= front; index += 1) names.push({ kind: "front", index, of: front });
  const plates = [...book.plates].sort((a, b) => a.afterPage - b.afterPage);
  for (let recto = 1; recto <= book.lastPage; recto += 2) {
    const verso = recto + 1 <= book.lastPage ? recto + 1 : null;
    names.push({ kind: "numbered", recto, verso });
    leafOfPage.set(recto, leafNumber(names.length));
    if (verso !== null) leafOfPage.set(verso, leafNumber(names.length));
    for (const plate of plates) {
      if (plate.afterPage !== recto && plate.afterPage !== recto + 1) continue;
      for (let index = 1; index <= plate.leaves; index += 1) {
        names.push({ kind: "plate", index, of: plate.leaves, afterPage: plate.afterPage });
      }
    }
  }
  const leavesNeeded = names.length;
  const end = book.leaves - leavesNeeded;
  for (let index = 1; index <= end; index += 1) names.push({ kind: "end", index, of: end });
  return {
    nameOf: (leaf) => {
      const name = names[leaf - 1];
      if (name === undefined || leaf > book.leaves)
        throw new RangeError(`leaf ${leaf} is not in a book of ${book.leaves} leaves`);
      return name;
    },
    leafOf: (page) => leafOfPage.get(page),
    leavesNeeded,
  };
}

/** The printed page number to look for: the recto, or null on an unnumbered leaf. */
export function bookPageOf(name: LeafName): number | null {
  return name.kind === "numbered" ? name.recto : null;
}

/** A pattern page of the n-th picture leaf (n from 1): 1, 3, 5 … */
export function patternPageOf(pictureLeaf: number): number {
  return 2 * pictureLeaf - 1;
}
