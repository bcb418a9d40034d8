import { touchClock, workedAt } from "./pace.ts";
import type { Progress } from "./progress.ts";

/** A break so long ends a sitting, ms. */
export const SITTING_BREAK = 3 * 60 * 60_000;

const DAY = 25 * 60 * 60_000;

/** Progress as something is done now, ms of the epoch: the clock goes on, after a long break with a new sitting. */
export function atWork(progress: Progress, now: number): Progress {
  const clock = touchClock(progress.clock, now);
  const sitting = sittingAt(progress, now) ?? { began: now, worked: clock.worked };
  return { ...progress, clock, sitting };
}

/** Working time in this sitting, ms; undefined where she has not begun one. */
export function workedSitting(progress: Progress, now: number): number | undefined {
  const sitting = sittingAt(progress, now);
  return sitting && Math.max(0, workedAt(progress.clock, now) - sitting.worked);
}

/** Says when this sitting shall end; undefined for no set time. */
export function stopAt(progress: Progress, until: number | undefined, now: number): Progress {
  const { sitting, ...at } = atWork(progress, now);
  return { ...at, sitting: { ...sitting!, until } };
}

/** When this sitting shall end, ms of the epoch; undefined where that is not set, or is no time of a day or so. */
export function stopOf(progress: Progress, now: number): number | undefined {
  const until = sittingAt(progress, now)?.until;
  return until !== undefined && Math.abs(until - now) < DAY ? until : undefined;
}

function sittingAt({ sitting, clock }: Progress, now: number): Progress["sitting"] {
  return sitting && Math.abs(now - clock.seen) < SITTING_BREAK ? sitting : undefined;
}
