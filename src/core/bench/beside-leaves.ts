import type { LeafNumber } from "../book/leaf-number.ts";
import type { Effort } from "../plan/effort.ts";
import type { WorkStep } from "../steps/work-step.ts";
import type { BenchItem, WholeStep } from "./bench-item.ts";

/** Where the other work stands among the leaves. */
export interface OtherWork {
  readonly beforeFirst: readonly BenchItem[];
  /** By the leaf that it comes after: the last one of a batch, or of all. */
  readonly after: ReadonlyMap<LeafNumber, readonly BenchItem[]>;
}

/** What is to do beside folding, in the order of the work's steps; `last` is the last leaf, `itemsOf` parts a step. */
export function besideLeaves(
  work: readonly WorkStep[],
  last: LeafNumber,
  itemsOf: (step: WorkStep) => readonly BenchItem[],
): OtherWork {
  const folding = work.findIndex(({ id }) => id === "fold" || id === "corners");
  const other = (steps: readonly WorkStep[]): BenchItem[] =>
    steps.filter(({ id }) => id !== "borderBefore" && id !== "borderAfter").flatMap(itemsOf);
  const after = new Map<LeafNumber, BenchItem[]>();
  for (const item of other(work.slice(folding + 1))) {
    const leaf = item.kind === "leaves" && item.leaves.at(-1)! <= item.batch.last.leaf ? item.batch.last.leaf : last;
    after.set(leaf, [...(after.get(leaf) ?? []), item]);
  }
  return { beforeFirst: other(work.slice(0, folding)), after };
}

/** A step that is done in one go. */
export function wholeStep(step: WorkStep, { byStage }: Effort): WholeStep {
  const minutes = step.stages.reduce((sum, stage) => sum + byStage[stage], 0);
  return { kind: "step", name: `step ${step.id}`, step, estimate: 60_000 * minutes };
}
