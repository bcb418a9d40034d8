import type { BenchItem, LeavesOfBatch } from "../../core/bench/bench-item.ts";
import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { stepTitle } from "../../words/steps.ts";
import { levelWords } from "./leaf-card.ts";

/** Other work in a sentence: its step, and of what where the step has several. */
export function itemName(plan: BenchPlan, item: BenchItem, style: LengthStyle): string {
  switch (item.kind) {
    case "step":
      return stepTitle(item.step.id);
    case "score":
      return say.benchStepOf({ step: stepTitle(item.step.id), of: levelWords(plan.pattern, item.level, style.units) });
    case "leaves":
      return say.benchStepOf({ step: leafWorkTitle(item), of: batchWords(plan, item) });
  }
}

/** `Batch 3 of 12`: what a batch's notches or tacks belong to. */
export function batchWords({ batches }: BenchPlan, { batch }: LeavesOfBatch): string {
  return say.benchOfBatch({ number: batch.number, count: batches.length });
}

/** What is done to the leaves of a batch. */
export function leafWorkTitle({ work }: LeavesOfBatch): string {
  return work === "notch" ? say.benchNotch() : say.benchTack();
}
