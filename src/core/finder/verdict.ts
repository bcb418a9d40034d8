import type { Failure } from "../findings/failure.ts";
import type { Kit } from "../kit/kit.ts";
import { effortOf } from "../plan/effort.ts";
import { type Making, makeCut } from "../refit/making.ts";
import { leastMargins } from "../refit/margins.ts";
import type { Offer } from "../refit/offer.ts";
import { offersFor } from "../refit/offers.ts";
import { judgeFit, type Quality, type Reason } from "../refit/quality.ts";
import { type Refit, refitKit } from "../refit/refit.ts";

/**
 * Whether a kit can be made in a reader's book: it fits, something is to be looked at first, or it comes out poorly; with one
 * of some changes; or not. Minutes are the work on that book.
 */
export type Verdict =
  | { readonly kind: Quality; readonly minutes: number; readonly reasons: readonly Reason[] }
  | { readonly kind: "change"; readonly offers: readonly Offer[]; readonly minutes: number }
  | { readonly kind: "no"; readonly failure: Failure };

/** Computes the kit in a book, light and window included. An offer is a change with which the whole kit fits, and not poorly. */
export function judge(kit: Kit, book: Refit, making: Making = makeCut): Verdict {
  const result = making(refitKit(kit, book));
  if (result.fits)
    return {
      ...judgeFit(result, leastMargins(kit)),
      minutes: effortOf(result.counts(), kit.rates).minutes,
    };
  const offers = offersFor(kit, book, making).filter(({ otherBook, quality }) => !otherBook && quality !== "poor");
  const [first] = offers;
  return first ? { kind: "change", offers, minutes: first.minutes } : { kind: "no", failure: result.finding };
}
