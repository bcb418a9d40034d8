import type { LeafNumber } from "../book/leaf-number.ts";
import type { Kit } from "../kit/kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { countsOf, type Effort, effortOf } from "../plan/effort.ts";
import { type LeafRun, scoringPlan } from "../plan/scoring.ts";
import { workOf } from "../steps/work.ts";
import type { WorkStep } from "../steps/work-step.ts";

/** Work at the bench that is no leaf to fold: a whole step, or one line pressed on a run of leaves. */
export type BenchItem = WholeStep | ScoredRun;

interface ItemOf {
  /** How progress remembers that it lies on the bench. */
  readonly name: string;
  readonly step: WorkStep;
  /** Estimated time, ms. */
  readonly estimate: number;
}

interface WholeStep extends ItemOf {
  readonly kind: "step";
}

export interface ScoredRun extends ItemOf {
  readonly kind: "score";
  /** Level number from 1. */
  readonly level: number;
  readonly run: LeafRun;
  /** Leaves of the run that need the line. */
  readonly needed: readonly LeafNumber[];
}

/** Where the other work stands among the leaves. */
export interface OtherWork {
  readonly beforeFirst: readonly BenchItem[];
}

/** What is to do beside folding, in the order of the work's steps. */
export function otherWork(kit: Kit, pattern: Pattern): OtherWork {
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
  };
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

/** `score 2 12-30`: the line of level 2 on leaves 12 to 30. */
export function scoreName(level: number, { first, last }: LeafRun): string {
  return `score ${level} ${first}-${last}`;
}
