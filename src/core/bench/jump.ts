import { describeLeaf, numberLeaves } from "../book/numbering.ts";
import type { BenchPlan } from "./bench-plan.ts";

/** Where a jump leads: a folded leaf, or why there is none. */
export type Jump = { readonly leaf: number } | { readonly problem: string };

/** The leaf that carries a printed page, front or back. */
export function jumpToPage(plan: BenchPlan, page: number): Jump {
  const { book } = plan.pattern;
  const leaf = numberLeaves(book).leafOf(page);
  if (leaf === undefined) return { problem: `Page ${page} is not in this book: pages run from 1 to ${book.lastPage}.` };
  const jump = jumpToLeaf(plan, leaf);
  return "problem" in jump ? { problem: `Page ${page} is on leaf ${leaf}. ${jump.problem}` } : jump;
}

/** The n-th sheet of the book, counted from the front. */
export function jumpToLeaf(plan: BenchPlan, leaf: number): Jump {
  const { book, lostLeaves } = plan.pattern;
  if (plan.stops.includes(leaf)) return { leaf };
  if (leaf < 1 || leaf > book.leaves || !Number.isInteger(leaf))
    return { problem: `Leaf ${leaf} is not in this book: it has ${book.leaves} leaves.` };
  if (lostLeaves.includes(leaf)) return { problem: `Leaf ${leaf} is left out.` };
  return { problem: `Leaf ${leaf} stays unfolded: folded leaves run from ${plan.stops[0]} to ${plan.stops.at(-1)}.` };
}

/** A leaf in words: `p. 137 (leaf 80)`, `front leaf 3 of 4 (leaf 3)`. */
export function leafInWords(plan: BenchPlan, leaf: number): string {
  const name = numberLeaves(plan.pattern.book).nameOf(leaf);
  return `${name.kind === "numbered" ? "p. " : ""}${describeLeaf(name)} (leaf ${leaf})`;
}
