import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import type { Figure } from "../drawing/figure.ts";
import { foldingFigure } from "./folding-steps.ts";
import { windowFigure } from "./window-steps.ts";

/** Draws a step of the work; undefined where it has no drawing. */
export type DrawStep = (id: StepId, kit: Kit, pattern: Pattern) => Figure | undefined;

/** All drawings of steps: many, so pages fetch them as a script of their own. */
export const drawStep: DrawStep = (id, kit, pattern) =>
  windowFigure(id, kit, pattern) ?? foldingFigure(id, kit, pattern);
