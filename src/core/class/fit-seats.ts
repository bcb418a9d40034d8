import { judge } from "../finder/verdict.ts";
import type { Doubt } from "../findings/doubt.ts";
import type { Failure } from "../findings/failure.ts";
import type { Kit } from "../kit/kit.ts";
import type { AnyPattern } from "../pattern/corner-pattern.ts";
import { fitAny } from "../pattern/fit-any.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { countsOfAny } from "../plan/any-effort.ts";
import { type Counts, type Effort, effortOf } from "../plan/effort.ts";
import { makeAny } from "../refit/any-making.ts";
import { leastMargins } from "../refit/margins.ts";
import type { Offer } from "../refit/offer.ts";
import { offersFor } from "../refit/offers.ts";
import { judgeFit } from "../refit/quality.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import type { UnitSystem } from "../units/length.ts";
import type { KitClass, Seat, SpareBook } from "./kit-class.ts";
import { wayOfSeat } from "./seat-way.ts";

/** A seat whose kit can be made in its book. */
export interface FittingSeat<Found extends AnyPattern = AnyPattern> {
  readonly seat: Seat;
  /** The kit matched to the seat's book, as its page shows it to a reader with that book. */
  readonly kit: Kit;
  /** Of one seat leaves may be cut, of another be folded by corners: `corner` tells which. */
  readonly pattern: Found;
  readonly findings: readonly Doubt[];
  readonly counts: Counts;
  /** By the kit's own rates, pace 1. */
  readonly effort: Effort;
}

/** Whether a seat cuts its leaves. */
export function isCutting(fit: FittingSeat): fit is FittingSeat<Pattern> {
  return fit.pattern.corner === undefined;
}

/** A seat whose book does not carry its kit: why, and the changes that help. */
export interface Misfit {
  readonly seat: Seat;
  readonly failure: Failure;
  readonly offers: readonly Offer[];
  /** Other kits of the class that this book carries, as they are or with a change. */
  readonly otherKits: readonly { readonly kit: Kit; readonly offer: Offer | undefined }[];
  /** Substitute books that carry the seat's kit as it is. */
  readonly spares: readonly SpareBook[];
}

export interface SeatFits {
  readonly fitting: readonly FittingSeat[];
  readonly misfits: readonly Misfit[];
}

/** What a seat that does not fit is offered, and in which units; its kit's own where none are given. */
interface Offered {
  readonly units?: UnitSystem;
  readonly spares?: readonly SpareBook[];
}

/** Fits every seat's kit to its book; a seat that does not fit stops none of the others. */
export function fitSeats(seats: readonly Seat[], kits: readonly Kit[], { units, spares = [] }: Offered = {}): SeatFits {
  const fitting: FittingSeat[] = [];
  const misfits: Misfit[] = [];
  for (const seat of seats) {
    const fit = fitSeat(seat);
    if ("failure" in fit) misfits.push(misfit(inUnits(seat, units), fit.failure, { kits, spares }));
    else fitting.push(fit);
  }
  return { fitting, misfits };
}

/** One seat's kit on its book, or why not. */
export function fitSeat(seat: Seat): FittingSeat | { readonly failure: Failure } {
  const kit = refitKit(seat.kit, seat.refit);
  const result = fitAny(kit);
  if (!result.fits) return { failure: result.finding };
  const { pattern, findings } = result;
  const counts = countsOfAny(pattern);
  return { seat, kit, pattern, findings, counts, effort: effortOf(counts, kit.rates) };
}

function inUnits(seat: Seat, units: UnitSystem | undefined): Seat {
  return units === undefined ? seat : { ...seat, kit: { ...seat.kit, units } };
}

function misfit(seat: Seat, failure: Failure, { kits, spares }: Pick<KitClass, "kits" | "spares">): Misfit {
  return {
    seat,
    failure,
    offers: offersFor(seat.kit, seat.refit, makeAny),
    otherKits: kits.filter((kit) => kit.slug !== seat.kit.slug).flatMap((kit) => otherKit(seat, kit)),
    spares: spares.filter(({ book }) => carries(seat, book)),
  };
}

/** Whether a book carries a seat's kit as it is, and nothing is to be checked first. */
function carries(seat: Seat, book: Refit): boolean {
  const { kit } = seat;
  const result = fitAny(refitKit(kit, { ...book, ...wayOfSeat(seat, kit) }));
  return result.fits && judgeFit(result, leastMargins(kit)).kind === "fits";
}

function otherKit(seat: Seat, kit: Kit): Misfit["otherKits"] {
  const verdict = judge({ ...kit, units: seat.kit.units }, onKit(seat, kit).refit, makeAny);
  if (verdict.kind === "no" || verdict.kind === "poor") return [];
  return [{ kit, offer: verdict.kind === "change" ? verdict.offers[0] : undefined }];
}

/** The seat's book under another kit of the class, as that kit is; without a knife where the seat has none. */
export function onKit(seat: Seat, kit: Kit): Seat {
  return { ...seat, kit, refit: { ...seat.book, ...wayOfSeat(seat, kit) } };
}
