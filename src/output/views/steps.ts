import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { WorkStep } from "../../core/work/work-step.ts";
import { cautionsOfSteps } from "./cautions.ts";
import { foldingTold } from "./folding-steps.ts";
import { type Step, stepOf, type Told } from "./step.ts";
import { windowTold } from "./window-steps.ts";

/** The work in its order, from the closed book to the shelf, with words and figures. */
export function stepsOf(kit: Kit, pattern: Pattern, work: readonly WorkStep[], effort: Effort): Step[] {
  const cautions = cautionsOfSteps(work);
  return work.map((step, i) => stepOf(step, told(step, kit, pattern), effort, cautions[i]!));
}

function told(step: WorkStep, kit: Kit, pattern: Pattern): Told {
  return windowTold(step.id, kit, pattern) ?? foldingTold(step.id, kit, pattern);
}
