import { judge } from "../finder/verdict.ts";
import type { Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { type Counts, countsOf, type Effort, effortOf } from "../plan/effort.ts";
import { Problem } from "../problem.ts";
import { type Offer, offersFor } from "../refit/offers.ts";
import { refitKit } from "../refit/refit.ts";
import type { UnitSystem } from "../units/length.ts";
import type { Seat } from "./kit-class.ts";

/** A seat whose kit can be made in its book. */
export interface FittingSeat {
  readonly seat: Seat;
  /** The kit matched to the seat's book, as its page shows it to a reader with that book. */
  readonly kit: Kit;
  readonly pattern: Pattern;
  readonly counts: Counts;
  /** By the kit's own rates, pace 1. */
  readonly effort: Effort;
}

/** A seat whose book does not carry its kit: why, and the changes that help. */
export interface Misfit {
  readonly seat: Seat;
  readonly problem: Problem;
  readonly offers: readonly Offer[];
  /** Other kits of the class that this book carries, as they are or with a change. */
  readonly otherKits: readonly { readonly kit: Kit; readonly offer: Offer | undefined }[];
}

export interface SeatFits {
  readonly fitting: readonly FittingSeat[];
  readonly misfits: readonly Misfit[];
}

/** Fits every seat's kit to its book; a seat that does not fit stops none of the others and is told of in `units`, or its kit's own. */
export function fitSeats(seats: readonly Seat[], kits: readonly Kit[], units?: UnitSystem): SeatFits {
  const fitting: FittingSeat[] = [];
  const misfits: Misfit[] = [];
  for (const seat of seats) {
    const result = fitSeat(seat);
    if (result instanceof Problem) misfits.push(misfit(inUnits(seat, units), result, kits));
    else fitting.push(result);
  }
  return { fitting, misfits };
}

/** One seat's kit on its book, or why not. */
export function fitSeat(seat: Seat): FittingSeat | Problem {
  const kit = refitKit(seat.kit, seat.refit);
  try {
    const pattern = computePattern(kit);
    const counts = countsOf(pattern);
    return { seat, kit, pattern, counts, effort: effortOf(counts, kit.rates) };
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

function inUnits(seat: Seat, units: UnitSystem | undefined): Seat {
  return units === undefined ? seat : { ...seat, kit: { ...seat.kit, units } };
}

function misfit(seat: Seat, found: Problem, kits: readonly Kit[]): Misfit {
  const told = fitSeat(seat);
  return {
    seat,
    problem: told instanceof Problem ? told : found,
    offers: offersFor(seat.kit, seat.refit),
    otherKits: kits.flatMap((kit) => {
      const verdict = kit.slug === seat.kit.slug ? undefined : judge({ ...kit, units: seat.kit.units }, seat.book);
      if (verdict?.kind === "own") return [{ kit, offer: undefined }];
      return verdict?.kind === "change" ? [{ kit, offer: verdict.offers[0] }] : [];
    }),
  };
}

/** The seat's book under another kit of the class, as that kit is. */
export function onKit(seat: Seat, kit: Kit): Seat {
  return { ...seat, kit, refit: seat.book };
}
