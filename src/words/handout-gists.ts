import type { Kit } from "../core/kit/kit.ts";
import type { StepId } from "../core/steps/work-step.ts";
import { stepGist } from "./gists.ts";
import * as say from "./messages.ts";

/** A step in a sentence that holds for every book of a kit: as its leaves are cut, folded and tacked. */
export function handoutGist(id: StepId, { fit }: Pick<Kit, "fit">): string {
  switch (id) {
    case "fold":
      return fit.foldStyle === "stepped"
        ? say.handoutFoldStepped({ tool: fit.cutWith })
        : say.handoutFold({ tool: fit.cutWith });
    case "tack":
      return say.handoutTack({ tack: fit.tackWith });
    default:
      return stepGist(id);
  }
}
