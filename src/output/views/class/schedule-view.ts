import type { KitClass } from "../../../core/class/kit-class.ts";
import { type Reach, type SeatSchedule, workMinutes } from "../../../core/class/schedule.ts";
import { hoursText } from "../../../words/hours.ts";
import { leafAndPage } from "../../../words/leaves.ts";
import { clockText, dateText, minutesText } from "./words.ts";

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
  /** How much is left, and what can be done about it; empty where it finishes. */
  readonly left: string;
  readonly remedies: readonly string[];
}

export function sessionViews(plan: KitClass): SessionView[] {
  const work = workMinutes(plan);
  return plan.sessions.map((session, i) => ({
    title: session.title,
    date: session.date === undefined ? "" : dateText(session.date),
    clock: session.starts === undefined ? "" : clockText(session.starts, session.minutes),
    length: minutesText(session.minutes),
    work: minutesText(work[i]!),
  }));
}

export function scheduleRows(plan: KitClass, schedules: readonly SeatSchedule[]): ScheduleRow[] {
  return schedules.map((schedule) => ({
    seat: schedule.fit.seat.number,
    kit: schedule.fit.kit.title,
    hours: hoursText(schedule.minutes),
    reaches: schedule.reaches.map((reach, i) => reachText(reach, schedule, schedule.reaches[i - 1])),
    finishes: schedule.short === 0,
    left: schedule.short === 0 ? "" : `${minutesText(Math.ceil(schedule.short))} short`,
    remedies: schedule.short === 0 ? [] : remediesOf(plan, schedule),
  }));
}

function reachText(reach: Reach, { fit }: SeatSchedule, before: Reach | undefined): string {
  if (before?.at === "finished") return "finished";
  const all = fit.pattern.leaves.length;
  if (reach.at === "finished") return "finished";
  if (reach.at === "scores") return "pressing score lines";
  if (reach.at === "parts") return `all ${all} leaves folded, at the window`;
  return reach.leaf === undefined
    ? "score lines pressed"
    : `${reach.leaves} of ${all} leaves, to ${leafAndPage(reach.leaf)}`;
}

/** What helps a seat that the sessions are too short for, the surest first. */
function remediesOf(plan: KitClass, schedule: SeatSchedule): string[] {
  const { fit, short, saves } = schedule;
  const last = schedule.reaches.at(-1)!;
  const rest = fit.pattern.leaves.length - last.leaves;
  const enough = (minutes: number): string =>
    minutes >= short ? "enough to finish" : `${minutesText(Math.ceil(short - minutes))} would still be missing`;
  const both = saves.scores + saves.parts;
  return [
    ...(rest > 0
      ? [
          `take it home after the last session: ${rest} leaves${last.at === "leaf" ? "" : " and the score lines"} with the bench page, about ${hoursText(short)}`,
        ]
      : [`finish the window at home, about ${hoursText(short)}`]),
    ...(saves.scores > 0
      ? [`press its score lines before the class: saves ${minutesText(saves.scores)}, ${enough(saves.scores)}`]
      : []),
    ...(saves.parts > 0
      ? [`cut its window parts before the class: saves ${minutesText(saves.parts)}, ${enough(saves.parts)}`]
      : []),
    ...(saves.scores > 0 && saves.parts > 0 ? [`both of these: ${enough(both)}`] : []),
    ...schedule.shorterKits.map((kit) => `make ${kit.title} instead: it fits this book and would be finished`),
    moreSessions(plan, short),
  ];
}

/** Sessions like the last one that would do. */
function moreSessions(plan: KitClass, short: number): string {
  const work = workMinutes(plan).at(-1)!;
  const count = Math.ceil(short / work);
  return `add ${count === 1 ? "a session" : `${count} sessions`} like the last one`;
}
