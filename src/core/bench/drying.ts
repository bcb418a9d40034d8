import type { BenchItem } from "./bench-item.ts";
import type { BenchPlan } from "./bench-plan.ts";
import type { Progress } from "./progress.ts";

/** Glue that dries, and when it will be dry, ms of the epoch. */
export interface Drying {
  readonly item: BenchItem;
  readonly dry: number;
}

/** What was glued last, until it is dry; undefined where nothing dries, or the device's clock was set back. `now` is ms of the epoch. */
export function dryingNow({ places }: BenchPlan, { glued }: Progress, now: number): Drying | undefined {
  const item = glued && places.find((place) => place.item?.name === glued.item)?.item;
  if (!item || glued.at > now) return undefined;
  const dry = glued.at + 60_000 * item.step.dries;
  return now < dry ? { item, dry } : undefined;
}
