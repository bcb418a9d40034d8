import { isFailure } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import { layOutPicture } from "../pattern/face.ts";
import { type Made, type Making, makeCut } from "./making.ts";
import { keepsFree, type Margins, marginsOf } from "./margins.ts";

/** So many leaves are laid out in search of offers for one book: many times what a book of this world needs, less than a second. */
const MOST_LEAVES = 9_000;

/** Laying a picture out without folding a leaf is about as much work as folding this share of the leaves. */
const SHARE_OF_TRY = 1 / 40;

/** A light or a window is about as much work as so many leaves. */
const WINDOW_AS_LEAVES = 200;

/** What is tried in search of offers, until it is enough: with a book of 3000 leaves a search has no end that a reader would wait for. */
export class Trials {
  /** Paper that stays free at head and tail. */
  readonly least: Margins;
  readonly #making: Making;
  #left: number;

  /** `share` of all that may be tried. */
  constructor(least: Margins, making: Making = makeCut, share = 1) {
    this.least = least;
    this.#making = making;
    this.#left = MOST_LEAVES * share;
  }

  /** Whether a kit can be laid out and keeps paper free; false where there is no more trying. */
  laysOut(kit: Kit): boolean {
    if (!this.#take(kit.book.leaves * SHARE_OF_TRY)) return false;
    const layout = layOutPicture(kit);
    if (isFailure(layout)) return false;
    const { head, solution } = layout.value;
    return keepsFree(marginsOf({ head, height: solution.height }, kit.book.leafHeight), this.least);
  }

  /** A kit as it is made, or why it cannot be; undefined where there is no more trying. */
  whole(kit: Kit): Made | undefined {
    const window = kit.light || kit.insert ? WINDOW_AS_LEAVES : 0;
    return this.#take(kit.book.leaves + window) ? this.#making(kit) : undefined;
  }

  #take(leaves: number): boolean {
    this.#left -= leaves;
    return this.#left >= 0;
  }
}
