import type { Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import { countsOf, effortOf } from "../plan/effort.ts";
import { Problem } from "../problem.ts";
import { type Offer, offersFor } from "../refit/offers.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import { reasonOf } from "./reason.ts";

/** Whether a kit can be made in a reader's book: as it is, with one of some changes, or why not. Minutes are the work on that book. */
export type Verdict =
  | { readonly kind: "own"; readonly minutes: number }
  | { readonly kind: "change"; readonly offers: readonly Offer[]; readonly minutes: number }
  | { readonly kind: "no"; readonly why: string }
  | { readonly kind: "unknown"; readonly why: string };

/** Computes the kit in a book, light and window included. A change counts only when the whole kit fits with it. */
export function judge(kit: Kit, book: Refit): Verdict {
  const own = minutesIn(kit, book);
  if (typeof own === "number") return { kind: "own", minutes: own };
  const asked = offersFor(kit, book).filter((offer) => !offer.otherBook);
  const tried = asked.map((offer) => ({ offer, minutes: minutesIn(kit, offer.refit) }));
  const fitting = tried.filter((one): one is { offer: Offer; minutes: number } => typeof one.minutes === "number");
  const [first] = fitting;
  return first
    ? { kind: "change", offers: fitting.map((one) => one.offer), minutes: first.minutes }
    : { kind: "no", why: reasonOf(own) };
}

function minutesIn(kit: Kit, refit: Refit): number | Problem {
  try {
    const pattern = computePattern(refitKit(kit, refit));
    return effortOf(countsOf(pattern), kit.rates).minutes;
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
