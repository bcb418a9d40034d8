import type { KitClass } from "../../../core/class/kit-class.ts";
import { remediesFor } from "../../../core/class/remedies.ts";
import { type SeatSchedule, workMinutes } from "../../../core/class/schedule.ts";
import { clockText, minutesText } from "../../../words/clock.ts";
import { dayText } from "../../../words/dates.ts";
import { hoursText } from "../../../words/hours.ts";
import { reachText, remedyText, roundedUp } from "../../../words/schedule.ts";

export interface SessionView {
  readonly title: string;
  readonly date: string;
  readonly clock: string;
  readonly length: string;
  readonly work: string;
}

/** A seat's way through the sessions as text. */
export interface ScheduleRow {
  readonly seat: number;
  readonly kit: string;
  readonly hours: string;
  /** One for each session. */
  readonly reaches: readonly string[];
  readonly finishes: boolean;
  /** How much time is missing; empty where it finishes. */
  readonly short: string;
  /** What can be done about it. */
  readonly remedies: readonly string[];
}

export function sessionViews(plan: KitClass): SessionView[] {
  const work = workMinutes(plan);
  return plan.sessions.map((session, i) => ({
    title: session.title,
    date: session.date === undefined ? "" : dayText(session.date),
    clock: session.starts === undefined ? "" : clockText(session.starts, session.minutes),
    length: minutesText(session.minutes),
    work: minutesText(work[i]!),
  }));
}

export function scheduleRows(plan: KitClass, schedules: readonly SeatSchedule[]): ScheduleRow[] {
  return schedules.map((schedule) => {
    const { fit, minutes, reaches, short } = schedule;
    return {
      seat: fit.seat.number,
      kit: fit.kit.title,
      hours: hoursText(minutes),
      reaches: reaches.map((reach) => reachText(reach, fit.pattern.leaves.length)),
      finishes: short === 0,
      short: short === 0 ? "" : roundedUp(short),
      remedies: remediesFor(plan, schedule).map(remedyText),
    };
  });
}
