import type { CornerWish } from "../core/kit/corner-wish.ts";
import type { Kit } from "../core/kit/kit.ts";
import type { StepId } from "../core/steps/work-step.ts";
import { stepGist } from "./gists.ts";
import * as say from "./messages.ts";

/** A step in a sentence that holds for every book of a kit: as its leaves are cut or their corners folded, and tacked. */
export function handoutGist(id: StepId, { fit }: Pick<Kit, "fit">): string {
  switch (id) {
    case "fold":
      return fit.foldStyle === "stepped"
        ? say.handoutFoldStepped({ tool: fit.cutWith })
        : say.handoutFold({ tool: fit.cutWith });
    case "tack":
      return say.handoutTack({ tack: fit.tackWith });
    default:
      return (fit.foldStyle === "corner" && cornerGist(id, fit.corner)) || stepGist(id);
  }
}

/** What is done in its own way where corners are folded. */
function cornerGist(id: StepId, { empty }: CornerWish): string | undefined {
  const toMiddle = empty === "middle";
  switch (id) {
    case "cornerGauge":
      return say.stepCornerGaugeGist({ with: toMiddle ? "gauge" : "card" });
    case "borderBefore":
      return say.stepBorderCornerBeforeGist({ empty: toMiddle ? "middle" : "card" });
    case "borderAfter":
      return say.stepBorderCornerAfterGist({ empty: toMiddle ? "middle" : "card" });
    default:
      return undefined;
  }
}
