import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { foldingSteps } from "./folding-steps.ts";
import type { Step } from "./step.ts";
import { windowSteps } from "./window-steps.ts";

/** The work from the closed book to the shelf, in an order in which glue can dry. */
export function stepsOf(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): Step[] {
  return [...foldingSteps(kit, pattern, counts, effort), ...windowSteps(kit, pattern, effort)];
}
