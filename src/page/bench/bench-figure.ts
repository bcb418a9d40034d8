import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import { fetchedStep, fetchStepDrawings } from "../shared/step-drawings.ts";

/** Draws a step into its place once the script for it is there. Without it the words stand alone. */
export async function drawStep(place: HTMLElement, id: StepId, { kit, pattern }: BenchPlan): Promise<void> {
  await fetchStepDrawings("../../../");
  place.innerHTML = fetchedStep(id, kit, pattern)?.svg ?? "";
}
