import type { LeafNumber } from "../book/leaf-number.ts";
import type { Outcome } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import { computePattern, type FitResult } from "../pattern/compute.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { type Batch, batchesOf, isCheckpoint } from "../plan/batches.ts";
import { revisionOf } from "../revision.ts";
import { stepFor } from "../units/length.ts";
import { leafEstimates } from "./pace.ts";
import { isTicked, type Progress } from "./progress.ts";

/** The leaves of a kit in the order in which they come under the hand, with batches and estimates. */
export interface BenchPlan {
  readonly kit: Kit;
  readonly pattern: Pattern;
  /** Every folded leaf in book order. */
  readonly stops: readonly LeafNumber[];
  readonly batches: readonly Batch[];
  readonly estimates: ReadonlyMap<LeafNumber, number>;
}

/** A question that stands before a leaf. `name` is how progress remembers the answer. */
export type Gate =
  | { readonly kind: "batch"; readonly name: string; readonly batch: Batch }
  | { readonly kind: "check"; readonly name: string }
  | { readonly kind: "measure"; readonly name: string; readonly batch: Batch };

/** Lays the bench work of a kit out, or says why it cannot be; marks are at the step that a ruler in its units has. */
export function planBench(kit: Kit): Outcome<BenchPlan> {
  const result = atRulerStep(kit);
  if (!result.fits) return { failure: result.finding };
  const { pattern } = result;
  return {
    value: {
      kit,
      pattern,
      stops: pattern.leaves.map((leaf) => leaf.leaf),
      batches: batchesOf(pattern, kit.fit.batch, kit.gaugeTile),
      estimates: leafEstimates(pattern, kit.rates),
    },
  };
}

function atRulerStep(kit: Kit): FitResult {
  const result = computePattern(kit);
  const markStep = stepFor(kit.units, kit.fit.markStep);
  if (!result.fits || Math.abs(markStep - kit.fit.markStep) < 1e-6) return result;
  return computePattern({ ...kit, fit: { ...kit.fit, markStep, head: result.pattern.fit.head } });
}

/** The first question before a leaf that is not answered yet; none once the leaf is ticked. */
export function gateBefore(plan: BenchPlan, progress: Progress, leaf: LeafNumber): Gate | undefined {
  return isTicked(progress, leaf)
    ? undefined
    : gatesOf(plan, progress, leaf).find((gate) => !progress.passed.includes(gate.name));
}

function gatesOf(plan: BenchPlan, progress: Progress, leaf: LeafNumber): Gate[] {
  const first = plan.batches[0];
  const gates: Gate[] = [];
  if (first && leaf === plan.stops.find((stop) => stop > first.last.leaf) && isDone(plan, progress, first))
    gates.push({ kind: "measure", name: "measure", batch: first });
  const batch = plan.batches.find((one) => one.first.leaf === leaf);
  if (batch) gates.push({ kind: "batch", name: `batch ${batch.number}`, batch });
  const own = plan.pattern.leaves.find((one) => one.leaf === leaf);
  if (own && isCheckpoint(own)) gates.push({ kind: "check", name: `check ${leaf}` });
  return gates;
}

function isDone(plan: BenchPlan, progress: Progress, batch: Batch): boolean {
  return plan.stops
    .filter((leaf) => leaf >= batch.first.leaf && leaf <= batch.last.leaf)
    .every((leaf) => isTicked(progress, leaf));
}

/** The stop after (1) or before (−1) a leaf; the leaf itself at the end. */
export function stopBeside(plan: BenchPlan, leaf: LeafNumber, side: 1 | -1): LeafNumber {
  const beyond = plan.stops.filter((stop) => (side === 1 ? stop > leaf : stop < leaf));
  return (side === 1 ? beyond[0] : beyond.at(-1)) ?? nearestStop(plan, leaf);
}

/** Where work goes on after a leaf: at the next stop, from the last one at the first leaf without a tick. */
export function leafAfter(plan: BenchPlan, progress: Progress, leaf: LeafNumber): LeafNumber {
  if (leaf !== plan.stops.at(-1)) return stopBeside(plan, leaf, 1);
  return plan.stops.find((stop) => !isTicked(progress, stop)) ?? leaf;
}

/** Whether every leaf is ticked. */
export function isFinished(plan: BenchPlan, progress: Progress): boolean {
  const ticked = new Set(progress.ticks.map((tick) => tick.leaf));
  return plan.stops.every((leaf) => ticked.has(leaf));
}

/** The leaf itself where it is folded, else the next one that is, else the last. */
export function nearestStop(plan: BenchPlan, leaf: LeafNumber): LeafNumber {
  return plan.stops.find((stop) => stop >= leaf) ?? plan.stops.at(-1)!;
}

/** Leaves before this one without a tick. */
export function untickedBefore(plan: BenchPlan, progress: Progress, leaf: LeafNumber): LeafNumber[] {
  return plan.stops.filter((stop) => stop < leaf && !isTicked(progress, stop));
}

/** Tells whether a kit's pattern is still the one that work began with. Lost leaves and units do not count. */
export function patternRevision(kit: Kit): Outcome<string> {
  const result = computePattern({ ...kit, insert: undefined, fit: { ...kit.fit, lostLeaves: [] } });
  if (!result.fits) return { failure: result.finding };
  return { value: revisionOf(result.pattern.leaves.map(({ leaf, spans }) => [leaf, spans])) };
}
