import type { SeenBothWays } from "../core/makeability/silhouette-seen.ts";
import * as say from "./messages.ts";

/** How much of the outline is seen that folded corners show, beside the same kit's figure where it is cut. */
export function seenWords({ folded, cut }: SeenBothWays): string {
  const percent = (share: number): string => say.unitPercent({ share: Math.round(share * 100) });
  return cut
    ? say.cornerSeen({ folded: percent(folded.paper), cut: percent(cut.paper) })
    : say.cornerSeenAlone({ folded: percent(folded.paper) });
}
