import type { StepId } from "../core/steps/work-step.ts";
import * as say from "./messages.ts";

const GISTS: Readonly<Record<StepId, () => string>> = {
  check: say.stepCheckGist,
  find: say.stepFindGist,
  gauge: say.stepGaugeGist,
  cornerGauge: () => say.stepCornerGaugeGist({ with: "card" }),
  score: say.stepScoreGist,
  borderBefore: say.stepBorderBeforeGist,
  fold: say.stepFoldGist,
  corners: say.stepCornersGist,
  notch: say.stepNotchGist,
  tack: say.stepTackGist,
  borderAfter: say.stepBorderAfterGist,
  hold: say.stepHoldGist,
  cut: say.stepCutGist,
  frame: say.stepFrameGist,
  glaze: say.stepGlazeGist,
  decorate: say.stepDecorateGist,
  hang: say.stepHangGist,
  close: say.stepCloseGist,
  light: say.stepLightGist,
};

/** A step in a sentence that holds for every book, for a class's handout. */
export function stepGist(id: StepId): string {
  return GISTS[id]();
}
