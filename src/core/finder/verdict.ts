import { type Doubt, type GraveDoubt, isGrave } from "../findings/doubt.ts";
import type { Failure } from "../findings/failure.ts";
import type { Kit } from "../kit/kit.ts";
import { fitKit } from "../pattern/fit-kit.ts";
import { countsOf, effortOf } from "../plan/effort.ts";
import type { Offer } from "../refit/offer.ts";
import { offersFor } from "../refit/offers.ts";
import { type Refit, refitKit } from "../refit/refit.ts";

/**
 * Whether a kit can be made in a reader's book: it fits; it fits, but something is to be checked first; with one of some
 * changes; or not. Minutes are the work on that book.
 */
export type Verdict =
  | { readonly kind: "fits"; readonly minutes: number }
  | { readonly kind: "check"; readonly minutes: number; readonly doubts: readonly GraveDoubt[] }
  | { readonly kind: "change"; readonly offers: readonly Offer[]; readonly minutes: number }
  | { readonly kind: "no"; readonly failure: Failure };

/** Computes the kit in a book, light and window included. An offer is a change with which the whole kit fits. */
export function judge(kit: Kit, book: Refit): Verdict {
  const own = madeIn(kit, book);
  if (!("failure" in own)) return { ...verdictOn(own.findings), minutes: own.minutes };
  const offers = offersFor(kit, book).filter((offer) => !offer.otherBook);
  const [first] = offers;
  const made = first && madeIn(kit, first.refit);
  return made && !("failure" in made)
    ? { kind: "change", offers, minutes: made.minutes }
    : { kind: "no", failure: own.failure };
}

/** A fit is good only where nothing says that the book was measured wrong or will not carry the piece well. */
export function verdictOn(
  findings: readonly Doubt[],
): { readonly kind: "fits" } | { readonly kind: "check"; readonly doubts: readonly GraveDoubt[] } {
  const doubts = findings.filter(isGrave);
  return doubts.length === 0 ? { kind: "fits" } : { kind: "check", doubts };
}

function madeIn(
  kit: Kit,
  refit: Refit,
): { readonly minutes: number; readonly findings: readonly Doubt[] } | { readonly failure: Failure } {
  const fitted = refitKit(kit, refit);
  const result = fitKit(fitted);
  if (!result.fits) return { failure: result.finding };
  return { minutes: effortOf(countsOf(result.pattern), kit.rates).minutes, findings: result.findings };
}
