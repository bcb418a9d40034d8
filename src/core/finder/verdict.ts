import type { Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import { graveWarnings } from "../pattern/warnings.ts";
import { countsOf, effortOf } from "../plan/effort.ts";
import { Problem } from "../problem.ts";
import { type Offer, offersFor } from "../refit/offers.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import { reasonOf } from "./reason.ts";

/** Whether a kit can be made in a reader's book: as it is (and what to look at before), with one of some changes, or why not. Minutes are the work on that book. */
export type Verdict =
  | { readonly kind: "own"; readonly minutes: number; readonly look: readonly string[] }
  | { readonly kind: "change"; readonly offers: readonly Offer[]; readonly minutes: number }
  | { readonly kind: "no"; readonly why: string }
  | { readonly kind: "unknown"; readonly why: string };

/** Computes the kit in a book, light and window included. A change counts only when the whole kit fits with it. */
export function judge(kit: Kit, book: Refit): Verdict {
  const own = madeIn(kit, book);
  if (!(own instanceof Problem)) return { kind: "own", ...own };
  const asked = offersFor(kit, book).filter((offer) => !offer.otherBook);
  const fitting = asked.flatMap((offer) => {
    const made = madeIn(kit, offer.refit);
    return made instanceof Problem ? [] : [{ offer, minutes: made.minutes }];
  });
  const [first] = fitting;
  return first
    ? { kind: "change", offers: fitting.map((one) => one.offer), minutes: first.minutes }
    : { kind: "no", why: reasonOf(own) };
}

function madeIn(kit: Kit, refit: Refit): { minutes: number; look: string[] } | Problem {
  try {
    const fitted = refitKit(kit, refit);
    const pattern = computePattern(fitted);
    return { minutes: effortOf(countsOf(pattern), kit.rates).minutes, look: graveWarnings(fitted, pattern) };
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
