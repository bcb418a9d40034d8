import type { Kit } from "../kit/kit.ts";
import type { PatternLeafBase } from "../pattern/pattern.ts";
import { type FittingSeat, fitSeat, onKit } from "./fit-seats.ts";
import type { KitClass, Seat, Session } from "./kit-class.ts";
import { workUntilPause } from "./running-order.ts";
import { minutesOf, type Task, tasksOf } from "./tasks.ts";
import { toolBlocks } from "./tool-blocks.ts";
import { takeTurns } from "./turns.ts";

/** Where a seat should be at a moment: its target. */
export interface Target {
  /** The last leaf that is folded, or undefined before the first. */
  readonly leaf: PatternLeafBase | undefined;
  /** Folded leaves of all. */
  readonly leaves: number;
  /** What is being worked on. */
  readonly at: "scores" | "leaf" | "parts" | "finished";
  /** Share of the whole work that is done, 0 to 1. */
  readonly share: number;
}

export interface SeatSchedule {
  readonly fit: FittingSeat;
  /** Work at the seat's pace, minutes. */
  readonly minutes: number;
  /** Minutes in which it waits for tools that are shared. */
  readonly waits: number;
  /** Minutes of work since the class began until its window is begun; undefined without a window. */
  readonly windowAt: number | undefined;
  /** Where it should be when each session ends. */
  readonly reaches: readonly Target[];
  /** Where it should be at each session's pause; undefined where a session has none. */
  readonly pauses: readonly (Target | undefined)[];
  /** Minutes that the sessions are too short by; 0 where it finishes. */
  readonly short: number;
  /** Minutes that a stage done beforehand would save, where it is not. */
  readonly saves: Readonly<Record<"scores" | "parts", number>>;
  /** Kits of the class that this book carries and that would be finished; only where this one is not. */
  readonly shorterKits: readonly Kit[];
}

/** What a class states of its time. */
export interface ClassTime extends Pick<KitClass, "ready" | "fittingShare"> {
  readonly sessions: readonly Pick<Session, "minutes" | "aside" | "buffer">[];
}

/** Each fitting seat's way through the sessions. */
export function scheduleOf(plan: KitClass, seats: readonly FittingSeat[]): SeatSchedule[] {
  const all = seats.map((fit) => ({ fit, tasks: tasksOf(plan, fit) }));
  const turns = takeTurns(
    plan.tools,
    all.map(({ fit, tasks }) => toolBlocks(plan, fit, tasks)),
  );
  return all.map(({ fit, tasks }, i) => seatSchedule(plan, fit, timed(tasks, turns[i]!)));
}

/** A seat's work in a class, minutes at its pace, and by how many the sessions are too short for it. */
export function timeOf(plan: ClassTime, fit: FittingSeat): Pick<SeatSchedule, "minutes" | "short"> {
  const minutes = minutesOf(tasksOf(plan, fit));
  return { minutes, short: Math.max(0, minutes - endsOf(plan).at(-1)!) };
}

/** The same of a seat whose kit was not fitted to its book yet; undefined where it does not fit. */
export function seatTime(plan: ClassTime, seat: Seat): Pick<SeatSchedule, "minutes" | "short"> | undefined {
  const fit = fitSeat(seat);
  return "failure" in fit ? undefined : timeOf(plan, fit);
}

/** Minutes of each session that are left for the work. */
export function workMinutes(plan: Pick<ClassTime, "sessions">): number[] {
  return plan.sessions.map(({ minutes, aside, buffer }) => minutes - aside - buffer);
}

/** A task with the minute at which it is done, of work since the class began. */
interface TimedTask extends Task {
  readonly until: number;
}

function timed(tasks: readonly Task[], waits: ReadonlyMap<number, number>): TimedTask[] {
  let until = 0;
  return tasks.map((task, i) => {
    until += (waits.get(i) ?? 0) + task.minutes;
    return { ...task, until };
  });
}

function seatSchedule(plan: KitClass, fit: FittingSeat, tasks: readonly TimedTask[]): SeatSchedule {
  const { byStage } = fit.effort;
  const { pace } = fit.seat;
  const minutes = minutesOf(tasks);
  const ends = endsOf(plan);
  const done = tasks.at(-1)?.until ?? 0;
  const short = Math.max(0, done - ends.at(-1)!);
  const window = tasks.find(({ kind }) => kind === "parts");
  return {
    fit,
    minutes,
    waits: done - minutes,
    windowAt: window && window.until - window.minutes,
    reaches: ends.map((at) => targetAt(tasks, at)),
    pauses: plan.sessions.map((session, i) => {
      const until = workUntilPause(session);
      return until === undefined ? undefined : targetAt(tasks, (ends[i - 1] ?? 0) + until);
    }),
    short,
    saves: {
      scores: plan.ready.includes("scores") ? 0 : byStage.score * pace,
      parts: plan.ready.includes("parts") ? 0 : byStage.part * pace * (1 - plan.fittingShare),
    },
    shorterKits: short > 0 ? plan.kits.filter((kit) => kit !== fit.seat.kit && finishes(plan, fit, kit)) : [],
  };
}

/** When each session ends, minutes of work since the class began. */
export function endsOf(plan: Pick<ClassTime, "sessions">): number[] {
  let until = 0;
  return workMinutes(plan).map((minutes) => {
    until += minutes;
    return until;
  });
}

/** Binary dust of sums of minutes. */
const ROUNDING = 1e-9;

function targetAt(tasks: readonly TimedTask[], at: number): Target {
  const done = tasks.filter(({ until }) => until <= at + ROUNDING).length;
  const folded = tasks.slice(0, done).filter((task) => task.kind === "leaf");
  return {
    leaf: folded.at(-1)?.leaf,
    leaves: folded.length,
    at: tasks[done]?.kind ?? "finished",
    share: Math.min(1, at / (tasks.at(-1)?.until ?? 0)),
  };
}

function finishes(plan: KitClass, fit: FittingSeat, kit: Kit): boolean {
  const other = fitSeat(onKit(fit.seat, kit));
  if ("failure" in other) return false;
  return timeOf(plan, other).short === 0;
}
