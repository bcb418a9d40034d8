import type { KitClass } from "../../../core/class/kit-class.ts";
import { type SeatWork, seatWork } from "../../../core/class/left-over.ts";
import { runningOrder, type Stretch } from "../../../core/class/running-order.ts";
import type { SeatSchedule, Target } from "../../../core/class/schedule.ts";
import { tasksOf } from "../../../core/class/tasks.ts";
import { dayText } from "../../../words/dates.ts";
import { leafName } from "../../../words/leaves.ts";
import * as say from "../../../words/messages.ts";

/** A class as it is shown and kept in its room. */
export interface RoomView {
  readonly sessions: readonly RoomSession[];
  readonly seats: readonly RoomSeat[];
}

/** A session by the clock. */
export interface RoomSession {
  readonly title: string;
  readonly day: string;
  /** ISO 8601 day and `18:30`, where they are stated. */
  readonly date: string | undefined;
  readonly starts: string | undefined;
  readonly order: readonly Stretch[];
}

/** A seat whose book fits, with its targets in words for each session. */
export interface RoomSeat {
  readonly number: number;
  readonly work: SeatWork;
  readonly targets: readonly { readonly pause: string | undefined; readonly end: string }[];
}

export function roomView(plan: KitClass, schedules: readonly SeatSchedule[]): RoomView {
  return {
    sessions: plan.sessions.map((session) => ({
      title: session.title,
      day: session.date === undefined ? "" : dayText(session.date),
      date: session.date,
      starts: session.starts,
      order: runningOrder(session),
    })),
    seats: schedules.map(({ fit, pauses, reaches }) => ({
      number: fit.seat.number,
      work: seatWork(tasksOf(plan, fit)),
      targets: reaches.map((end, i) => ({ pause: pauses[i] && targetText(pauses[i]), end: targetText(end) })),
    })),
  };
}

/** A target that is read from the last row: `p. 87`. */
function targetText({ at, leaf }: Target): string {
  if (at !== "leaf") return say.roomTarget({ at });
  if (leaf === undefined) return say.roomTargetScored();
  return leaf.name.kind === "numbered" ? say.leafPage({ page: leaf.name.recto }) : leafName(leaf.name);
}
