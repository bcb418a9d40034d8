import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import type { StepId, WorkStep } from "../../core/steps/work-step.ts";
import { cautionsOfSteps } from "./cautions.ts";
import { foldingTold } from "./folding-steps.ts";
import { type Step, stepOf, type Told } from "./step.ts";
import { windowTold } from "./window-steps.ts";

/** How much there is to do, and how long it takes. */
interface Estimate {
  readonly counts: Counts;
  readonly effort: Effort;
}

/** The work in its order, from the closed book to the shelf, with words and figures. */
export function stepsOf(kit: Kit, pattern: Pattern, work: readonly WorkStep[], { counts, effort }: Estimate): Step[] {
  const cautions = cautionsOfSteps(work);
  const told = (id: StepId): Told => windowTold(id, kit, pattern) ?? foldingTold(id, kit, pattern, counts);
  return work.map((step, i) => stepOf(step, told(step.id), effort, cautions[i]!));
}
