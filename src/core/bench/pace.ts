import type { BenchPlan } from "./bench-plan.ts";
import { isDone } from "./moving.ts";
import type { Place } from "./places.ts";
import type { Clock, Progress, Tick } from "./progress.ts";

/** A pause counts as work for at most so long, ms. */
export const IDLE = 4 * 60_000;

/** So many timed leaves say more about a maker's pace than the estimate does. */
export const TELLING = 5;

/** A tick sooner than this after the one before is no folding: she catches up with work done elsewhere. ms */
export const CATCH_UP = 3000;

/** Counts the time since something was last done, a longer pause only up to `IDLE`. A clock set back counts nothing. */
export function touchClock(clock: Clock, now: number): Clock {
  return { ...clock, worked: workedAt(clock, now), seen: now };
}

/** Working time up to now, ms. */
export function workedAt(clock: Clock, now: number): number {
  return clock.seen === 0 ? clock.worked : clock.worked + Math.min(Math.max(0, now - clock.seen), IDLE);
}

/** What is still to do, ms. `own`: judged by the maker's own ticks, not by the estimate alone. */
export interface Remaining {
  readonly ms: number;
  readonly own: boolean;
}

/** The estimate of what is not done, times how much longer or shorter the timed leaves took than theirs. */
export function remainingTime(plan: Estimated, progress: Progress): Remaining {
  const { slowness, own } = paceOf(plan, progress);
  const open = plan.places.filter((place) => !isDone(progress, place));
  return { ms: slowness * sum(open.map((place) => estimateOf(plan, place))), own };
}

/** How many times the estimate the work takes; 1 until her own ticks say more. */
export interface Pace {
  readonly slowness: number;
  readonly own: boolean;
}

export function paceOf({ estimates }: Estimated, { ticks }: Progress): Pace {
  const timed = ticks.filter((tick) => tick.took >= CATCH_UP && estimates.has(tick.leaf));
  if (timed.length < TELLING) return { slowness: 1, own: false };
  return { slowness: slownessOf(timed, estimates), own: true };
}

/** Of what lies on the bench, ms. */
export function estimateOf({ estimates }: Estimated, { leaf, item }: Place): number {
  return item?.estimate ?? estimates.get(leaf)!;
}

/** What times are worked out from. */
export type Estimated = Pick<BenchPlan, "places" | "estimates">;

function slownessOf(timed: readonly Tick[], estimates: BenchPlan["estimates"]): number {
  return sum(timed.map((tick) => tick.took)) / sum(timed.map((tick) => estimates.get(tick.leaf)!));
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
