import type { Pattern } from "../../../core/pattern/pattern.ts";
import * as say from "../../../words/messages.ts";

/** The edge that cuts are measured from at the bench: with stepped folds the leaf is folded before it is cut. */
export function edgeName({ fit }: Pick<Pattern, "fit">): string {
  return fit.foldStyle === "stepped" ? say.drawFoldedEdge() : say.drawForeEdge();
}
