import type { LeafNumber } from "../book/leaf-number.ts";
import type { Kit } from "../kit/kit.ts";
import type { Pattern, PatternLeafBase } from "../pattern/pattern.ts";
import type { Batch } from "../plan/batches.ts";
import { countsOf, effortOf } from "../plan/effort.ts";
import { scoringPlan } from "../plan/scoring.ts";
import { tackList } from "../plan/tack-list.ts";
import type { WorkStep } from "../steps/work-step.ts";
import { type LeafWork, type LeavesOfBatch, type ScoredRun, scoreName } from "./bench-item.ts";
import { besideLeaves, type OtherWork, wholeStep } from "./beside-leaves.ts";

/** What is to do beside folding where leaves are cut, in the order of the work's steps. */
export function otherWork(
  kit: Kit,
  pattern: Pattern,
  { work, batches }: { readonly work: readonly WorkStep[]; readonly batches: readonly Batch<PatternLeafBase>[] },
): OtherWork {
  const effort = effortOf(countsOf(pattern), kit.rates);
  return besideLeaves(work, pattern.leaves.at(-1)!.leaf, (step) =>
    step.id === "score"
      ? scoredRuns(kit, pattern, step)
      : (leafWork(kit, pattern, batches, step) ?? [wholeStep(step, effort)]),
  );
}

/**
 * Notches or tacks by batch; undefined for any other step. Border leaves before the first batch go with it, those after the
 * last one with that one: all of its leaves are then done at once, when the closing border leaves are folded.
 */
function leafWork(
  { rates }: Kit,
  pattern: Pattern,
  batches: readonly Batch<PatternLeafBase>[],
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
