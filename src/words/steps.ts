import * as say from "./messages.ts";

const TITLES = {
  check: say.stepCheck,
  find: say.stepFind,
  gauge: say.stepGauge,
  score: say.stepScore,
  border: say.stepBorder,
  fold: say.stepFold,
  notch: say.stepNotch,
  tack: say.stepTack,
  hold: say.stepHold,
  cut: say.stepCut,
  frame: say.stepFrame,
  glaze: say.stepGlaze,
  decorate: say.stepDecorate,
  hang: say.stepHang,
  close: say.stepClose,
  light: say.stepLight,
} as const;

/** A step of the work. */
export type StepId = keyof typeof TITLES;

/** The part of the work that a step belongs to: the folded book, or what closes and lights it. */
export type StepSection = "book" | "window";

export function stepTitle(id: StepId): string {
  return TITLES[id]();
}

/** The heading of a part of the work. */
export function sectionName(section: StepSection): string {
  return section === "book" ? say.stepSectionBook() : say.stepSectionWindow();
}
