import type { StepId, StepSection } from "../core/steps/work-step.ts";
import * as say from "./messages.ts";

const TITLES: Readonly<Record<StepId, () => string>> = {
  check: say.stepCheck,
  find: say.stepFind,
  gauge: say.stepGauge,
  cornerGauge: say.stepCornerGauge,
  score: say.stepScore,
  borderBefore: say.stepBorderBefore,
  fold: say.stepFold,
  corners: say.stepCorners,
  notch: say.stepNotch,
  tack: say.stepTack,
  borderAfter: say.stepBorderAfter,
  hold: say.stepHold,
  cut: say.stepCut,
  frame: say.stepFrame,
  glaze: say.stepGlaze,
  decorate: say.stepDecorate,
  hang: say.stepHang,
  close: say.stepClose,
  light: say.stepLight,
};

export function stepTitle(id: StepId): string {
  return TITLES[id]();
}

/** The heading of a part of the work. */
export function sectionName(section: StepSection): string {
  return section === "book" ? say.stepSectionBook() : say.stepSectionWindow();
}
