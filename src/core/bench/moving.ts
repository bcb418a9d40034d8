import type { LeafNumber } from "../book/leaf-number.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { isItemDone } from "./item-done.ts";
import type { Place } from "./places.ts";
import { isTicked, type Progress } from "./progress.ts";

/** Where the work is: at the item that progress names, else at its leaf. */
export function placeNow({ places }: Pick<BenchPlan, "places">, { at, item }: Pick<Progress, "at" | "item">): Place {
  const named = item === undefined ? undefined : places.find((place) => place.item?.name === item);
  return named ?? leafPlace(places, at);
}

function leafPlace(places: readonly Place[], leaf: LeafNumber): Place {
  return places.find((place) => place.leaf === leaf && !place.item)!;
}

/** The place after (1) or before (−1) this one; itself at the end. */
export function placeBeside({ places }: BenchPlan, place: Place, side: 1 | -1): Place {
  return places[places.indexOf(place) + side] ?? place;
}

/** Where work goes on after a place: at the next one, from the last at the first that is not done. */
export function placeAfter(plan: BenchPlan, progress: Progress, place: Place): Place {
  if (place !== plan.places.at(-1)) return placeBeside(plan, place, 1);
  return plan.places.find((one) => !isDone(progress, one)) ?? place;
}

/** Whether a leaf is ticked, or other work is done. */
export function isDone(progress: Progress, { leaf, item }: Place): boolean {
  return item ? isItemDone(progress, item) : isTicked(progress, leaf);
}

/** Whether every leaf is ticked and all other work is done. */
export function isFinished({ places }: BenchPlan, progress: Progress): boolean {
  return places.every((place) => isDone(progress, place));
}

/** What comes before a place and is not done. */
export function openBefore({ places }: BenchPlan, progress: Progress, place: Place): Place[] {
  return places.slice(0, places.indexOf(place)).filter((one) => !isDone(progress, one));
}
