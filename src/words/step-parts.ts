import type { MadePart } from "../core/steps/work-step.ts";
import * as say from "./messages.ts";
import { partName } from "./parts.ts";

/** What a step makes or puts together. */
export function stepPartName(part: MadePart): string {
  switch (part) {
    case "gauge":
      return say.stepPartGauge();
    case "cornerGauge":
      return say.stepPartCornerGauge();
    case "foldingCard":
      return say.stepPartFoldingCard();
    default:
      return partName(part);
  }
}
