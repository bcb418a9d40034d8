import type { Book } from "./book.ts";
import { type LeafNumber, leafNumber } from "./leaf-number.ts";
import { leavesNeeded, numberLeaves } from "./numbering.ts";

/** What is counted of a book's pages. */
export type Counted = Pick<Book, "pageOneLeaf" | "lastPage" | "plates">;

/** A leaf whose front carries this page where the pages were counted rightly. */
export interface PageCheck {
  readonly leaf: LeafNumber;
  readonly page: number;
}

/** A leaf that is soon counted to, and so far behind page 1 at least. */
const NEAR = { leaf: 20, behind: 5 } as const;

/** How far into the pages the second leaf lies, and how many leaves lie between both at least. */
const FAR = { share: 7 / 8, apart: 10 } as const;

/** Leaves that tell whether pages were counted rightly: one near the front for the leaf with page 1, one near the end for leaves without a number. */
export function pageChecks(counted: Counted): PageCheck[] {
  const leaves = leavesNeeded(counted);
  const middle = Math.ceil((leaves + counted.pageOneLeaf) / 2);
  const near = checkFrom(counted, Math.min(middle, Math.max(NEAR.leaf, counted.pageOneLeaf + NEAR.behind)));
  const far = checkFrom(counted, Math.floor(leaves * FAR.share));
  if (!near) return [];
  return far && far.leaf >= near.leaf + FAR.apart ? [near, far] : [near];
}

/** The first leaf from this one on that carries a number. */
function checkFrom(counted: Counted, from: number): PageCheck | undefined {
  const leaves = leavesNeeded(counted);
  const { nameOf } = numberLeaves({ ...counted, leaves });
  for (let leaf = leafNumber(Math.max(1, from)); leaf <= leaves; leaf = leafNumber(leaf + 1)) {
    const name = nameOf(leaf);
    if (name.kind === "numbered") return { leaf, page: name.recto };
  }
  return undefined;
}

/** What another page on the front of a leaf means, or why it cannot be right. */
export type PageFound =
  /** Page 1 is on another leaf. */
  | { readonly kind: "page-one"; readonly pageOneLeaf: LeafNumber }
  /** So many leaves before it have no number. */
  | { readonly kind: "unnumbered"; readonly leaves: number }
  /** An even page is on a back. */
  | { readonly kind: "back" }
  /** There is no such page, or page 1 would be before the first leaf. */
  | { readonly kind: "impossible" };

/** What it means that the leaf of a check carries `page` on its front: near the front the leaf with page 1 was miscounted, further on leaves have no number. */
export function pageFound(counted: Counted, check: PageCheck, page: number, isNear: boolean): PageFound {
  if (page % 2 === 0) return { kind: "back" };
  const later = (check.page - page) / 2;
  const pageOneLeaf = counted.pageOneLeaf + later;
  if (page > counted.lastPage || (isNear ? pageOneLeaf < 1 : later < 0)) return { kind: "impossible" };
  return isNear ? { kind: "page-one", pageOneLeaf: leafNumber(pageOneLeaf) } : { kind: "unnumbered", leaves: later };
}
