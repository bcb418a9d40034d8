import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import { drawStep } from "../../output/views/step-drawing.ts";

/** The drawing of a step on the maker's own book, as SVG; empty where it has none. */
export function stepFigure(id: StepId, { kit, pattern }: Pick<BenchPlan<Pattern>, "kit" | "pattern">): string {
  return drawStep(id, kit, pattern)?.svg ?? "";
}
