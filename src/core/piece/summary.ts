import type { Desk } from "../bench/desk.ts";
import { isDone, isFinished, placeNow } from "../bench/moving.ts";
import type { Place } from "../bench/places.ts";
import { isTicked } from "../bench/progress.ts";
import { bookPageOf, numberLeaves } from "../book/numbering.ts";
import type { PieceSummary } from "./piece.ts";

/** Where the work on a desk is. */
export function summaryOf({ plan, progress }: Pick<Desk, "plan" | "progress">): PieceSummary {
  const done = plan.stops.filter((leaf) => isTicked(progress, leaf)).length;
  const { leaf, item } = placeNow(plan, progress);
  const page = bookPageOf(numberLeaves(plan.kit.book).nameOf(leaf)) ?? undefined;
  const here = item ? {} : { leaf, ...(page === undefined ? {} : { page }) };
  return { done, of: plan.stops.length, percent: percentOf({ plan, progress }), ...here };
}

/** By the estimated time; a kit whose rates are all 0 counts its leaves and steps alike. */
function percentOf({ plan, progress }: Pick<Desk, "plan" | "progress">): number {
  if (isFinished(plan, progress)) return 100;
  const estimated = (place: Place): number => place.item?.estimate ?? plan.estimates.get(place.leaf)!;
  const timed = plan.places.some((place) => estimated(place) > 0);
  const share = (places: readonly Place[]): number =>
    places.reduce((sum, place) => sum + (timed ? estimated(place) : 1), 0);
  const done = share(plan.places.filter((place) => isDone(progress, place)));
  return Math.min(99, Math.floor((100 * done) / share(plan.places)));
}
