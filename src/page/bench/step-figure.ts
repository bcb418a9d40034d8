import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import { foldingFigure } from "../../output/views/folding-steps.ts";
import { windowFigure } from "../../output/views/window-steps.ts";

/** The drawing of a step on the maker's own book, as SVG; empty where it has none. */
export function stepFigure(id: StepId, { kit, pattern }: BenchPlan): string {
  return (windowFigure(id, kit, pattern) ?? foldingFigure(id, kit, pattern))?.svg ?? "";
}
