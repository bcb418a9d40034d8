import type { LeafNumber } from "../book/leaf-number.ts";
import type { Rates } from "../kit/kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { leafSeconds } from "../plan/leaf-effort.ts";
import { linesOf } from "../plan/scoring.ts";
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

/** Estimated bench time of each leaf by its number, ms: what the kit's rates give for its lines, marks, cuts, folds and notch. */
export function leafEstimates(pattern: Pattern, rates: Rates): Map<LeafNumber, number> {
  return new Map(
    leafSeconds(pattern, rates).map(({ leaf, seconds }) => [
      leaf.leaf,
      1000 * (seconds + rates.score * linesOf(leaf, pattern).length),
    ]),
  );
}

/** What is still to do, ms. `own`: judged by the maker's own ticks, not by the estimate alone. */
export interface Remaining {
  readonly ms: number;
  readonly own: boolean;
}

/** The estimate of the leaves without a tick, times how much longer or shorter the timed ones took than theirs. */
export function remainingTime(progress: Progress, estimates: ReadonlyMap<LeafNumber, number>): Remaining {
  const done = new Set(progress.ticks.map((tick) => tick.leaf));
  const rest = sum([...estimates].filter(([leaf]) => !done.has(leaf)).map(([, ms]) => ms));
  const timed = progress.ticks.filter((tick) => tick.took >= CATCH_UP && estimates.has(tick.leaf));
  if (timed.length < TELLING) return { ms: rest, own: false };
  return { ms: rest * slowness(timed, estimates), own: true };
}

function slowness(timed: readonly Tick[], estimates: ReadonlyMap<LeafNumber, number>): number {
  return sum(timed.map((tick) => tick.took)) / sum(timed.map((tick) => estimates.get(tick.leaf)!));
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
