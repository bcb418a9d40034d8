import type { LeafNumber } from "../book/leaf-number.ts";
import { isDone, placeNow } from "./moving.ts";
import { type Estimated, estimateOf, paceOf, workedAt } from "./pace.ts";
import type { Place } from "./places.ts";
import type { Progress } from "./progress.ts";

/** How far the work comes by a time. */
export interface Reach {
  /** The last leaf that is folded by then; undefined where none is. */
  readonly leaf: LeafNumber | undefined;
  /** Leaves that are folded until then. */
  readonly leaves: number;
  /** Whether all that is open from here on is done by then. */
  readonly end: boolean;
  /** Judged by her own pace, not by the estimate alone. */
  readonly own: boolean;
}

/**
 * How far she comes from what lies on the bench until a time, in the order of the work. What she has worked on it already
 * counts. `until` and `now` are ms of the epoch.
 */
export function reachBy(plan: Estimated, progress: Progress, until: number, now: number): Reach {
  const { slowness, own } = paceOf(plan, progress);
  const { clock } = progress;
  const begun = clock.seen === 0 ? 0 : workedAt(clock, now) - clock.ticked;
  let left = (until - now + begun) / slowness;
  const open = openFrom(plan, progress);
  const done = open.filter((place) => {
    left -= estimateOf(plan, place);
    return left >= 0;
  });
  const folded = done.filter(({ item }) => !item);
  return { leaf: folded.at(-1)?.leaf, leaves: folded.length, end: done.length === open.length, own };
}

function openFrom({ places }: Estimated, progress: Progress): Place[] {
  const here = placeNow({ places }, progress);
  return places.slice(places.indexOf(here)).filter((place) => !isDone(progress, place));
}
