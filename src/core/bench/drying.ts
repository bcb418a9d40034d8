import type { BenchItem } from "./bench-item.ts";
import type { BenchPlan } from "./bench-plan.ts";
import type { Progress } from "./progress.ts";

/** Glue that dries, and when it will be dry, ms of the epoch. */
export interface Drying {
  readonly item: BenchItem;
  readonly dry: number;
}

/** What dries, the soonest dry first. What a device whose clock was set back has yet to glue is left out. `now` is ms of the epoch. */
export function dryingNow(plan: BenchPlan, progress: Progress, now: number): Drying[] {
  return gluedBy(plan, progress, now).filter(({ dry }) => now < dry);
}

/** What has become dry since she last did something. */
export function dryNow(plan: BenchPlan, progress: Progress, now: number): Drying[] {
  return gluedBy(plan, progress, now).filter(({ dry }) => progress.clock.seen < dry && dry <= now);
}

function gluedBy({ places }: BenchPlan, { glued = [] }: Progress, now: number): Drying[] {
  return glued
    .filter(({ at }) => at <= now)
    .flatMap(({ item: name, at }) => {
      const item = places.find((place) => place.item?.name === name)?.item;
      return item ? [{ item, dry: at + 60_000 * item.step.dries }] : [];
    })
    .sort((a, b) => a.dry - b.dry);
}
