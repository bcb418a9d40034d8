import type { Book } from "./book.ts";
import { plateLeaves } from "./last-page.ts";
import { type LeafNumber, leafNumber } from "./leaf-number.ts";

/** What a leaf says of itself: its two printed pages, or which unnumbered leaf it is. */
export type LeafName =
  | { readonly kind: "numbered"; readonly recto: number; readonly verso: number | null }
  | { readonly kind: "front"; readonly index: number; readonly of: number }
  | { readonly kind: "plate"; readonly index: number; readonly of: number; readonly afterPage: number }
  | { readonly kind: "end"; readonly index: number; readonly of: number };

/** The figures of a book that number its leaves. */
export type PagesOfBook = Pick<Book, "leaves" | "pageOneLeaf" | "lastPage" | "plates">;

/** Both maps between the leaves of one book and its printed pages. Leaves count from 1. */
export interface Numbering {
  /** Every leaf from 1 to `book.leaves` has a name. @throws RangeError for another leaf. */
  readonly nameOf: (leaf: LeafNumber) => LeafName;
  /** The leaf that carries a printed page, recto or verso; undefined where no leaf does. */
  readonly leafOf: (page: number) => LeafNumber | undefined;
}

/**
 * Leaf L has printed recto 2(L − a) + 1 where no plates come before; a plate has no number and later leaves count that many less.
 * A leaf is two pages, recto first (AACR2 glossary, "Leaf"; Getty AAT, "folios").
 */
export function numberLeaves(book: PagesOfBook): Numbering {
  const front = book.pageOneLeaf - 1;
  const carrying = [...unnumbered("front", front), ...pagesAndPlates(book)];
  const names = [...carrying, ...unnumbered("end", book.leaves - carrying.length)];
  const leafOfPage = new Map<number | null, LeafNumber>();
  for (const [i, name] of names.entries()) {
    if (name.kind !== "numbered") continue;
    leafOfPage.set(name.recto, leafNumber(i + 1));
    leafOfPage.set(name.verso, leafNumber(i + 1));
  }
  return {
    nameOf: (leaf) => {
      const name = names[leaf - 1];
      if (name === undefined || leaf > book.leaves)
        throw new RangeError(`leaf ${leaf} is not in a book of ${book.leaves} leaves`);
      return name;
    },
    leafOf: (page) => leafOfPage.get(page),
  };
}

/** Leaves needed to carry `pageOneLeaf`, `lastPage` and the plates; more than `book.leaves` means the figures disagree. Counted without naming them. */
export function leavesNeeded({ pageOneLeaf, lastPage, plates }: Omit<PagesOfBook, "leaves">): number {
  const ofPages = Math.ceil(lastPage / 2);
  const among = plates.filter(({ afterPage }) => afterPage >= 1 && afterPage <= 2 * ofPages);
  return pageOneLeaf - 1 + ofPages + plateLeaves(among);
}

function unnumbered(kind: "front" | "end", of: number): LeafName[] {
  return Array.from({ length: of }, (_, i) => ({ kind, index: i + 1, of }));
}

/** A leaf for each two pages, with the plates that follow it: a leaf cannot be parted. */
function pagesAndPlates({ lastPage, plates }: PagesOfBook): LeafName[] {
  const inOrder = plates.toSorted((a, b) => a.afterPage - b.afterPage);
  return Array.from({ length: Math.ceil(lastPage / 2) }, (_, i) => 2 * i + 1).flatMap((recto): LeafName[] => [
    { kind: "numbered", recto, verso: recto < lastPage ? recto + 1 : null },
    ...inOrder
      .filter(({ afterPage }) => afterPage === recto || afterPage === recto + 1)
      .flatMap(({ afterPage, leaves: of }) =>
        Array.from({ length: of }, (_, i) => ({ kind: "plate", index: i + 1, of, afterPage }) as const),
      ),
  ]);
}

/** The printed page number to look for: the recto, or null on an unnumbered leaf. */
export function bookPageOf(name: LeafName): number | null {
  return name.kind === "numbered" ? name.recto : null;
}

/** A pattern page of the n-th picture leaf (n from 1): 1, 3, 5 … */
export function patternPageOf(pictureLeaf: number): number {
  return 2 * pictureLeaf - 1;
}
