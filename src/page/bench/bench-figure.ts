import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import type { stepFigure } from "./step-figure.ts";

declare global {
  interface Window {
    leaflightStepFigure?: typeof stepFigure;
  }
}

/** Draws a step into its place once the script for it is there. Without it the words stand alone. */
export async function drawStep(place: HTMLElement, id: StepId, plan: BenchPlan): Promise<void> {
  place.innerHTML = await stepSvg(id, plan);
}

/** The drawing of a step; empty where it has none, or its script cannot be loaded. */
export async function stepSvg(id: StepId, plan: BenchPlan): Promise<string> {
  try {
    if (!window.leaflightStepFigure) await loadScript("../../../assets/scripts/step-figures.js", "figures");
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
  }
  return window.leaflightStepFigure?.(id, plan) ?? "";
}
