import type { LeafNumber } from "../book/leaf-number.ts";
import { numberLeaves } from "../book/numbering.ts";
import type { BenchPlan } from "./bench-plan.ts";

/** Where a jump leads: a folded leaf, or why there is none. `page` is what was asked for, where it was a page. */
export type Jump =
  | { readonly leaf: LeafNumber }
  | { readonly page: number | undefined; readonly obstacle: JumpObstacle };

/** Why there is no way to a page or leaf. Leaves count from 1. */
export type JumpObstacle =
  /** No leaf carries the page; the book's last one is `last`. */
  | { readonly kind: "no-page"; readonly page: number; readonly last: number }
  | { readonly kind: "no-leaf"; readonly leaf: LeafNumber; readonly leaves: number }
  | { readonly kind: "left-out"; readonly leaf: LeafNumber }
  /** Folded leaves run from `first` to `last`. */
  | { readonly kind: "unfolded"; readonly leaf: LeafNumber; readonly first: LeafNumber; readonly last: LeafNumber };

/** The leaf that carries a printed page, front or back. */
export function jumpToPage(plan: BenchPlan, page: number): Jump {
  const { book } = plan.pattern;
  const leaf = numberLeaves(book).leafOf(page);
  if (leaf === undefined) return { page: undefined, obstacle: { kind: "no-page", page, last: book.lastPage } };
  const jump = jumpToLeaf(plan, leaf);
  return "obstacle" in jump ? { ...jump, page } : jump;
}

/** The n-th sheet of the book, counted from the front. */
export function jumpToLeaf(plan: BenchPlan, leaf: LeafNumber): Jump {
  return plan.stops.includes(leaf) ? { leaf } : { page: undefined, obstacle: obstacleAt(plan, leaf) };
}

function obstacleAt({ pattern, stops }: BenchPlan, leaf: LeafNumber): JumpObstacle {
  const { leaves } = pattern.book;
  if (leaf < 1 || leaf > leaves || !Number.isInteger(leaf)) return { kind: "no-leaf", leaf, leaves };
  if (pattern.lostLeaves.includes(leaf)) return { kind: "left-out", leaf };
  return { kind: "unfolded", leaf, first: stops[0]!, last: stops.at(-1)! };
}
