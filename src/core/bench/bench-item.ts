import type { LeafNumber } from "../book/leaf-number.ts";
import type { PatternLeafBase } from "../pattern/pattern.ts";
import type { Batch } from "../plan/batches.ts";
import type { LeafRun } from "../plan/scoring.ts";
import type { WorkStep } from "../steps/work-step.ts";

/** Work at the bench that is no leaf to fold: a whole step, a line pressed on a run of leaves, or a batch's notches or tacks. */
export type BenchItem = WholeStep | ScoredRun | LeavesOfBatch;

interface ItemOf {
  /** How progress remembers that it lies on the bench. */
  readonly name: string;
  readonly step: WorkStep;
  /** Estimated time, ms. */
  readonly estimate: number;
}

export interface WholeStep extends ItemOf {
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

export interface LeavesOfBatch extends ItemOf {
  readonly kind: "leaves";
  readonly work: LeafWork;
  readonly batch: Batch<PatternLeafBase>;
  /** With the border leaves before the first batch, or after the last. */
  readonly leaves: readonly LeafNumber[];
}

/** What is done to the leaves of a batch once it is folded. */
export type LeafWork = "notch" | "tack";

/** `score 2 12-30`: the line of level 2 is pressed on leaves 12 to 30. */
export function scoreName(level: number, { first, last }: LeafRun): string {
  return `score ${level} ${first}-${last}`;
}

/** `notch 41`: leaf 41 is notched. */
export function leafWorkName(work: LeafWork, leaf: LeafNumber): string {
  return `${work} ${leaf}`;
}

/** The leaf that is notched or tacked where a name says so. */
export function leafOfWork(name: string): LeafNumber | undefined {
  const [, leaf] = /^(?:notch|tack) (\d+)$/.exec(name) ?? [];
  return leaf === undefined ? undefined : (Number(leaf) as LeafNumber);
}
