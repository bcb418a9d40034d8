import type { Kit } from "../kit/kit.ts";
import type { PatternLeaf } from "../pattern/pattern.ts";
import { leafMinutes } from "../plan/leaf-effort.ts";
import { type FittingSeat, fitSeat, onKit } from "./fit-seats.ts";
import type { KitClass, Session } from "./kit-class.ts";

/** A piece of a seat's work, in the order of the kit's steps; minutes at the seat's pace. */
export interface Task {
  readonly kind: "scores" | "leaf" | "parts";
  readonly leaf: PatternLeaf | undefined;
  readonly minutes: number;
}

/** Where a seat should be when a session ends. */
export interface SessionEnd {
  /** The last leaf that is folded, or undefined before the first. */
  readonly leaf: PatternLeaf | undefined;
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
  readonly reaches: readonly SessionEnd[];
  /** Minutes that the sessions are too short by; 0 where it finishes. */
  readonly short: number;
  /** Minutes that a stage done beforehand would save, where it is not. */
  readonly saves: Readonly<Record<"scores" | "parts", number>>;
  /** Kits of the class that this book carries and that would be finished; only where this one is not. */
  readonly shorterKits: readonly Kit[];
}

/** What a class states of its time. */
export interface ClassTime extends Pick<KitClass, "ready" | "fittingShare"> {
  readonly sessions: readonly Pick<Session, "minutes" | "aside">[];
}

/** Each fitting seat's way through the sessions. */
export function scheduleOf(plan: KitClass, seats: readonly FittingSeat[]): SeatSchedule[] {
  const work = workMinutes(plan);
  return seats.map((fit) => {
    const tasks = tasksOf(plan, fit);
    const { minutes, short } = timeOf(plan, fit);
    const { byStage } = fit.effort;
    const { pace } = fit.seat;
    return {
      fit,
      minutes,
      reaches: reachesOf(tasks, work),
      short,
      saves: {
        scores: plan.ready.includes("scores") ? 0 : byStage.score * pace,
        parts: plan.ready.includes("parts") ? 0 : byStage.part * pace * (1 - plan.fittingShare),
      },
      shorterKits: short > 0 ? plan.kits.filter((kit) => kit !== fit.seat.kit && finishes(plan, fit, kit)) : [],
    };
  });
}

/** A seat's work in a class, minutes at its pace, and by how many the sessions are too short for it. */
export function timeOf(plan: ClassTime, fit: FittingSeat): Pick<SeatSchedule, "minutes" | "short"> {
  const minutes = sum(tasksOf(plan, fit));
  return { minutes, short: Math.max(0, minutes - sum(workMinutes(plan).map((one) => ({ minutes: one })))) };
}

/** Minutes of each session that are left for the work. */
export function workMinutes(plan: Pick<ClassTime, "sessions">): number[] {
  return plan.sessions.map((session) => session.minutes - session.aside);
}

/** A seat's work in order: score lines, leaf by leaf, window. What the teacher has ready takes no time, or its share. */
export function tasksOf(plan: Pick<KitClass, "ready" | "fittingShare">, fit: FittingSeat): Task[] {
  const { effort, pattern, kit, seat } = fit;
  const share = plan.ready.includes("parts") ? plan.fittingShare : 1;
  const tasks: Task[] = [
    { kind: "scores", leaf: undefined, minutes: plan.ready.includes("scores") ? 0 : effort.byStage.score },
    ...leafMinutes(pattern, kit.rates).map(({ leaf, minutes }) => ({ kind: "leaf" as const, leaf, minutes })),
    { kind: "parts", leaf: undefined, minutes: effort.byStage.part * share },
  ];
  return tasks.filter((task) => task.minutes > 0).map((task) => ({ ...task, minutes: task.minutes * seat.pace }));
}

function reachesOf(tasks: readonly Task[], work: readonly number[]): SessionEnd[] {
  const total = sum(tasks);
  let until = 0;
  return work.map((minutes) => {
    until += minutes;
    let spent = 0;
    let done = 0;
    while (done < tasks.length && spent + tasks[done]!.minutes <= until + 1e-9) {
      spent += tasks[done]!.minutes;
      done += 1;
    }
    const folded = tasks.slice(0, done).filter((task) => task.kind === "leaf");
    return {
      leaf: folded.at(-1)?.leaf,
      leaves: folded.length,
      at: tasks[done]?.kind ?? "finished",
      share: Math.min(1, until / total),
    };
  });
}

function finishes(plan: KitClass, fit: FittingSeat, kit: Kit): boolean {
  const other = fitSeat(onKit(fit.seat, kit));
  if ("failure" in other) return false;
  return timeOf(plan, other).short === 0;
}

function sum(tasks: readonly { readonly minutes: number }[]): number {
  return tasks.reduce((total, task) => total + task.minutes, 0);
}
