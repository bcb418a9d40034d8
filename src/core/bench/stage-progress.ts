import type { PatternLeafBase } from "../pattern/pattern.ts";
import type { Batch } from "../plan/batches.ts";
import { type Stage, type StageId, stageOf, stagesOf } from "../steps/stages.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { isDone, isFinished, placeNow } from "./moving.ts";
import type { Place } from "./places.ts";
import { isTicked, type Progress } from "./progress.ts";

/** How much of something is done, in places of the bench: leaves, and pieces of other work. */
export interface Done {
  readonly done: number;
  readonly of: number;
}

export interface StageProgress extends Stage, Done {
  /** Whether the work lies here now; of a finished piece no stage is. */
  readonly now: boolean;
}

/** A batch with its folded leaves; border leaves are in none. */
export interface BatchProgress extends Done {
  readonly batch: Batch<PatternLeafBase>;
}

/** How far each stage of the work is. */
export function stageProgress(plan: BenchPlan, progress: Progress): StageProgress[] {
  const { work, places } = plan;
  const here = isFinished(plan, progress) ? undefined : stageAt(placeNow(plan, progress));
  return stagesOf(work).map((stage) => {
    const own = places.filter((place) => stageAt(place) === stage.id);
    return {
      ...stage,
      done: own.filter((place) => isDone(progress, place)).length,
      of: own.length,
      now: stage.id === here,
    };
  });
}

/** How far each batch is. */
export function batchProgress({ batches, stops }: BenchPlan, progress: Progress): BatchProgress[] {
  return batches.map((batch) => {
    const own = stops.filter((leaf) => leaf >= batch.first.leaf && leaf <= batch.last.leaf);
    return { batch, done: own.filter((leaf) => isTicked(progress, leaf)).length, of: own.length };
  });
}

/** Where no other work is named, a leaf is folded. */
function stageAt({ item }: Place): StageId {
  return item ? stageOf(item.step) : "fold";
}
