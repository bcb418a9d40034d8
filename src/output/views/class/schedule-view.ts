import { frameDrying } from "../../../core/class/drying.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import { remediesFor } from "../../../core/class/remedies.ts";
import { type SeatSchedule, workMinutes } from "../../../core/class/schedule.ts";
import { clockText, minutesText } from "../../../words/clock.ts";
import { dayText } from "../../../words/dates.ts";
import { dryingText } from "../../../words/evening.ts";
import { hoursText } from "../../../words/hours.ts";
import * as say from "../../../words/messages.ts";
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
  /** At each session's pause; empty where it has none. */
  readonly pauses: readonly string[];
  /** When its frame is glued and its door hung; empty where nothing dries. */
  readonly drying: string;
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
    const { fit, minutes, reaches, pauses, short } = schedule;
    const all = fit.pattern.leaves.length;
    const drying = frameDrying(plan, schedule);
    return {
      seat: fit.seat.number,
      kit: fit.kit.title,
      hours: hoursText(minutes),
      reaches: reaches.map((reach) => reachText(reach, all)),
      pauses: pauses.map((pause) => (pause === undefined ? "" : say.eveningAtPause({ target: reachText(pause, all) }))),
      drying: drying === undefined ? "" : dryingText(drying, plan.sessions),
      finishes: short === 0,
      short: short === 0 ? "" : roundedUp(short),
      remedies: remediesFor(plan, schedule).map(remedyText),
    };
  });
}
