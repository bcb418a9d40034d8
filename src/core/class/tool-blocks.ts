import { type FittingSeat, isCutting } from "./fit-seats.ts";
import type { KitClass, SharedTool } from "./kit-class.ts";
import { minutesOf, type Task } from "./tasks.ts";

/** Tasks in one go at a seat, which begin with tools in hand. Minutes at the seat's pace. */
export interface ToolBlock {
  /** Index of the first task of it. */
  readonly task: number;
  readonly tools: readonly SharedTool[];
  /** How long the tools are held, from its beginning. */
  readonly holds: number;
  readonly minutes: number;
}

const KNIFE: readonly SharedTool[] = ["knife", "mat"];

/**
 * A seat's tasks as blocks. Knives, scissors and mats go round by batches, as each batch is cut before it is folded; the awl is
 * held while lines are pressed, the glue gun while the window is put together (common practice, no source). Who folds by corners
 * needs none of them.
 */
export function toolBlocks(
  plan: Pick<KitClass, "ready" | "fittingShare">,
  fit: FittingSeat,
  tasks: readonly Task[],
): ToolBlock[] {
  const indexed = tasks.map((task, index) => ({ task, index }));
  const batches = inBatches(
    indexed.filter(({ task }) => task.kind === "leaf"),
    fit.kit.fit.batch,
  );
  const of = (kind: Task["kind"]) => indexed.filter(({ task }) => task.kind === kind);
  return [
    ...of("scores").map(
      ({ task, index }): ToolBlock => ({
        task: index,
        tools: ["awl"],
        holds: task.minutes,
        minutes: task.minutes,
      }),
    ),
    ...batches.map((batch): ToolBlock => {
      const leaves = batch.map(({ task }) => task);
      return {
        task: batch[0]!.index,
        tools: cuttersOf(fit),
        holds: cuttingOf(fit, leaves),
        minutes: minutesOf(leaves),
      };
    }),
    ...of("parts").flatMap(({ task, index }) => windowBlocks(plan, task, index)),
  ];
}

/** Cutting parts out, where they are not ready, then putting them together. */
function windowBlocks(
  { ready, fittingShare }: Pick<KitClass, "ready" | "fittingShare">,
  { minutes }: Task,
  task: number,
): ToolBlock[] {
  const cutting = ready.includes("parts") ? 0 : minutes * (1 - fittingShare);
  const fitting = minutes - cutting;
  return [
    { task, tools: KNIFE, holds: cutting, minutes: cutting },
    { task, tools: ["glueGun"], holds: fitting, minutes: fitting },
  ];
}

function cuttersOf(fit: FittingSeat): readonly SharedTool[] {
  if (!isCutting(fit)) return [];
  return fit.kit.fit.cutWith === "scissors" ? ["scissors"] : KNIFE;
}

/** Marks and cuts of some leaves, minutes at the seat's pace. */
function cuttingOf({ kit: { rates }, seat }: FittingSeat, leaves: readonly Task[]): number {
  const cuts = leaves.reduce((sum, { leaf }) => sum + (leaf && "cuts" in leaf ? leaf.cuts.length : 0), 0);
  return (cuts * (rates.mark + rates.cut) * seat.pace) / 60;
}

function inBatches<T>(all: readonly T[], most: number): T[][] {
  return Array.from({ length: Math.ceil(all.length / most) }, (_, i) => all.slice(i * most, (i + 1) * most));
}
