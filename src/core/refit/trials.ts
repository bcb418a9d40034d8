import type { Kit } from "../kit/kit.ts";
import { type FitResult, tryFit } from "../pattern/compute.ts";
import { fitKit } from "../pattern/fit-kit.ts";

/** So many leaves are laid out in search of offers for one book: many times what a book of this world needs, less than a second. */
const MOST_LEAVES = 12_000;

/** Laying a picture out without folding a leaf is about as much work as folding this share of the leaves. */
const SHARE_OF_TRY = 1 / 40;

/** What is tried in search of offers, until it is enough: with a book of 3000 leaves a search has no end that a reader would wait for. */
export class Trials {
  #left = MOST_LEAVES;

  /** Whether a kit can be laid out; false where there is no more trying. */
  laysOut(kit: Kit): boolean {
    return this.#take(kit.book.leaves * SHARE_OF_TRY) && tryFit(kit) === undefined;
  }

  /** A kit's whole pattern, or why there is none; undefined where there is no more trying. */
  whole(kit: Kit): FitResult | undefined {
    return this.#take(kit.book.leaves) ? fitKit(kit) : undefined;
  }

  #take(leaves: number): boolean {
    this.#left -= leaves;
    return this.#left >= 0;
  }
}
