import type { Session } from "./kit-class.ts";

/** A stretch of a session, whole minutes from its start. */
export interface Stretch {
  readonly kind: "settle" | "work" | "pause" | "catch-up" | "tidy";
  readonly from: number;
  readonly until: number;
}

/** Of the time that is no work at the book: settling in, and the pause. The rest is for tidying (common practice, no source). */
const SETTLING = 0.25;
const PAUSE = 0.5;

/** How a session runs: the pause stands in the middle of the work, what is kept free for the late before tidying. */
export function runningOrder({ minutes, aside, buffer }: Session): Stretch[] {
  const settle = Math.round(aside * SETTLING);
  const pause = Math.round(aside * PAUSE);
  const work = minutes - aside - buffer;
  const [before, after] = pause > 0 ? halves(work) : [work, 0];
  const lengths = [
    ["settle", settle],
    ["work", before],
    ["pause", pause],
    ["work", after],
    ["catch-up", buffer],
    ["tidy", aside - settle - pause],
  ] as const;
  let from = 0;
  return lengths.flatMap(([kind, length]) => {
    if (length <= 0) return [];
    const stretch = { kind, from, until: from + length };
    from += length;
    return [stretch];
  });
}

/** Minutes of work in a session until its pause, or undefined where it has none. */
export function workUntilPause(session: Session): number | undefined {
  const order = runningOrder(session);
  if (!order.some(({ kind }) => kind === "pause")) return undefined;
  const { from, until } = order.find(({ kind }) => kind === "work")!;
  return until - from;
}

/** The minute of a session at which so many minutes of its work are done. */
export function minuteOfWork(session: Session, work: number): number {
  let left = work;
  for (const { kind, from, until } of runningOrder(session)) {
    if (kind !== "work") continue;
    if (left <= until - from + ROUNDING) return from + left;
    left -= until - from;
  }
  return session.minutes;
}

/** Of sums of minutes. */
const ROUNDING = 1e-9;

function halves(minutes: number): [number, number] {
  const first = Math.ceil(minutes / 2);
  return [first, minutes - first];
}
