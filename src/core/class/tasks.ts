import type { CornerLeaf } from "../pattern/corner-pattern.ts";
import type { PatternLeaf } from "../pattern/pattern.ts";
import { minutesByLeaf } from "../plan/any-effort.ts";
import type { FittingSeat } from "./fit-seats.ts";
import type { KitClass } from "./kit-class.ts";

/** A piece of a seat's work, in the order of the kit's steps; minutes at the seat's pace. */
export interface Task {
  readonly kind: "scores" | "leaf" | "parts";
  readonly leaf: PatternLeaf | CornerLeaf | undefined;
  readonly minutes: number;
}

/** A seat's work in order: score lines, leaf by leaf, window. What the teacher has ready takes no time, or its share. */
export function tasksOf(plan: Pick<KitClass, "ready" | "fittingShare">, fit: FittingSeat): Task[] {
  const { effort, pattern, kit, seat } = fit;
  const share = plan.ready.includes("parts") ? plan.fittingShare : 1;
  const tasks: Task[] = [
    { kind: "scores", leaf: undefined, minutes: plan.ready.includes("scores") ? 0 : effort.byStage.score },
    ...minutesByLeaf(pattern, kit.rates).map(({ leaf, minutes }) => ({ kind: "leaf" as const, leaf, minutes })),
    { kind: "parts", leaf: undefined, minutes: effort.byStage.part * share },
  ];
  return tasks.filter((task) => task.minutes > 0).map((task) => ({ ...task, minutes: task.minutes * seat.pace }));
}

/** Minutes of some tasks together. */
export function minutesOf(tasks: readonly Pick<Task, "minutes">[]): number {
  return tasks.reduce((total, task) => total + task.minutes, 0);
}
