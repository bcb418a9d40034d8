import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import type { WorkStep } from "../../core/steps/work-step.ts";
import { cautionsOfSteps } from "./cautions.ts";
import { foldingText } from "./folding-steps.ts";
import { type Step, stepOf } from "./step.ts";
import type { DrawStep } from "./step-drawing.ts";
import { windowText } from "./window-steps.ts";

/** How much there is to do, and how long it takes. */
interface Estimate {
  readonly counts: Counts;
  readonly effort: Effort;
}

/** The work in its order, from the closed book to the shelf, with words and figures. */
export function stepsOf(
  kit: Kit,
  pattern: Pattern,
  work: readonly WorkStep[],
  { counts, effort }: Estimate,
  draw: DrawStep,
): Step[] {
  const cautions = cautionsOfSteps(work);
  return work.map((step, i) => {
    const text = windowText(step.id, kit, pattern) ?? foldingText(step.id, kit, pattern, counts);
    return stepOf(step, { text, figure: draw(step.id, kit, pattern) }, effort, cautions[i]!);
  });
}
