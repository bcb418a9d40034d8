import type { PatternLeafBase } from "../pattern/pattern.ts";
import { type Batch, isCheckpoint } from "../plan/batches.ts";
import type { BenchPlan } from "./bench-plan.ts";
import { isDone } from "./moving.ts";
import type { Place } from "./places.ts";
import { isTicked, type Progress } from "./progress.ts";

/** A question that stands before a leaf or other work. `name` is how progress remembers the answer. */
export type Gate =
  | { readonly kind: "batch"; readonly name: string; readonly batch: Batch<PatternLeafBase> }
  | { readonly kind: "check"; readonly name: string }
  | { readonly kind: "measure"; readonly name: string; readonly batch: Batch<PatternLeafBase> };

/** The first question before a place that is not answered yet; none once the place is done. */
export function gateBefore(plan: BenchPlan, progress: Progress, place: Place): Gate | undefined {
  return isDone(progress, place)
    ? undefined
    : gatesOf(plan, progress, place).find((gate) => !progress.passed.includes(gate.name));
}

function gatesOf(plan: BenchPlan, progress: Progress, place: Place): Gate[] {
  const first = plan.batches[0];
  const gates: Gate[] = [];
  if (first && place === afterLeaf(plan, first.last.leaf) && isFolded(plan, progress, first))
    gates.push({ kind: "measure", name: "measure", batch: first });
  if (place.item) return gates;
  const { leaf } = place;
  const batch = plan.batches.find((one) => one.first.leaf === leaf);
  if (batch) gates.push({ kind: "batch", name: `batch ${batch.number}`, batch });
  const own: PatternLeafBase | undefined = plan.pattern.leaves.find((one) => one.leaf === leaf);
  if (own && isCheckpoint(own)) gates.push({ kind: "check", name: `check ${leaf}` });
  return gates;
}

/** What comes right after a leaf. */
function afterLeaf({ places }: BenchPlan, leaf: number): Place | undefined {
  return places[places.findIndex((place) => place.leaf === leaf && !place.item) + 1];
}

function isFolded(plan: BenchPlan, progress: Progress, batch: Batch<PatternLeafBase>): boolean {
  return plan.stops
    .filter((leaf) => leaf >= batch.first.leaf && leaf <= batch.last.leaf)
    .every((leaf) => isTicked(progress, leaf));
}
