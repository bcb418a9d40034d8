import type { LeafNumber } from "../book/leaf-number.ts";
import type { Kit } from "../kit/kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Batch } from "../plan/batches.ts";
import { countsOf, type Effort, effortOf } from "../plan/effort.ts";
import { scoringPlan } from "../plan/scoring.ts";
import { tackList } from "../plan/tack-list.ts";
import { workOf } from "../steps/work.ts";
import type { WorkStep } from "../steps/work-step.ts";
import {
  type BenchItem,
  type LeafWork,
  type LeavesOfBatch,
  type ScoredRun,
  scoreName,
  type WholeStep,
} from "./bench-item.ts";

/** Where the other work stands among the leaves. */
export interface OtherWork {
  readonly beforeFirst: readonly BenchItem[];
  /** By the leaf that it comes after: the last one of a batch, or of all. */
  readonly after: ReadonlyMap<LeafNumber, readonly BenchItem[]>;
}

/** What is to do beside folding, in the order of the work's steps. */
export function otherWork(kit: Kit, pattern: Pattern, batches: readonly Batch[]): OtherWork {
  const counts = countsOf(pattern);
  const effort = effortOf(counts, kit.rates);
  const work = workOf(kit, pattern, counts);
  const folding = work.findIndex(({ id }) => id === "fold");
  return {
    beforeFirst: work
      .slice(0, folding)
      .filter(({ id }) => id !== "borderBefore")
      .flatMap((step): BenchItem[] =>
        step.id === "score" ? scoredRuns(kit, pattern, step) : [wholeStep(step, effort)],
      ),
    after: afterFolding(
      pattern,
      work
        .slice(folding + 1)
        .filter(({ id }) => id !== "borderAfter")
        .flatMap((step): BenchItem[] => leafWork(kit, pattern, batches, step) ?? [wholeStep(step, effort)]),
    ),
  };
}

function afterFolding(pattern: Pattern, items: readonly BenchItem[]): OtherWork["after"] {
  const last = pattern.leaves.at(-1)!.leaf;
  const after = new Map<LeafNumber, BenchItem[]>();
  for (const item of items) {
    const leaf = item.kind === "leaves" && item.leaves.at(-1)! <= item.batch.last.leaf ? item.batch.last.leaf : last;
    after.set(leaf, [...(after.get(leaf) ?? []), item]);
  }
  return after;
}

/**
 * Notches or tacks by batch; undefined for any other step. Border leaves before the first batch go with it, those after the
 * last one with that one: all of its leaves are then done at once, when the closing border leaves are folded.
 */
function leafWork(
  { rates }: Kit,
  pattern: Pattern,
  batches: readonly Batch[],
  step: WorkStep,
): LeavesOfBatch[] | undefined {
  const { id: work } = step;
  if (work !== "notch" && work !== "tack") return undefined;
  const each = leavesOf(pattern, work);
  return batches.flatMap((batch, i) => {
    const from = batches[i - 1]?.last.leaf ?? 0;
    const to = i === batches.length - 1 ? Number.POSITIVE_INFINITY : batch.last.leaf;
    const own = each.filter((leaf) => leaf > from && leaf <= to);
    const estimate = 1000 * rates[work] * own.length;
    const leaves = [...new Set(own)];
    return own.length === 0
      ? []
      : [{ kind: "leaves", name: `${work} batch ${batch.number}`, step, work, batch, leaves, estimate }];
  });
}

/** A leaf stands as often as it is notched or tacked. */
function leavesOf(pattern: Pattern, work: LeafWork): LeafNumber[] {
  return work === "tack"
    ? tackList(pattern).glued.map((tack) => tack.leaf.leaf)
    : (pattern.pocket?.notches ?? []).map((notch) => notch.leaf);
}

function wholeStep(step: WorkStep, { byStage }: Effort): WholeStep {
  const minutes = step.stages.reduce((sum, stage) => sum + byStage[stage], 0);
  return { kind: "step", name: `step ${step.id}`, step, estimate: 60_000 * minutes };
}

function scoredRuns({ rates }: Kit, pattern: Pattern, step: WorkStep): ScoredRun[] {
  return scoringPlan(pattern).flatMap(({ level, runs, needed }) =>
    runs.map((run) => ({
      kind: "score",
      name: scoreName(level, run),
      step,
      level,
      run,
      needed: needed.filter((leaf) => leaf >= run.first && leaf <= run.last),
      estimate: 1000 * rates.score * (run.last - run.first + 1),
    })),
  );
}
