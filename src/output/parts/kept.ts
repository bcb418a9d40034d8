import type { Kit } from "../../core/kit/kit.ts";
import type { SeenPicture } from "../../core/makeability/kept-levels.ts";
import type { SeenBothWays } from "../../core/makeability/silhouette-seen.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { seenWords } from "../../words/seen.ts";
import { shortName } from "../../words/short-name.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** What is lost in this share of the picture or less is not worth a sentence. */
const SLIGHT = 0.005;

/** How much of each level is seen from the front through the fan of a kit's own book, and what takes the rest; empty where all is. */
export function keptPart({ levels }: Kit, seen: SeenPicture | undefined): Markup {
  const kept = (seen?.levels ?? []).flatMap(({ level, share }) => {
    const percent = Math.round(share * 100);
    if (percent >= 100) return [];
    return [
      say.kitKeptLevel({ percent: say.unitPercent({ share: percent }), level: shortName(levels[level - 1]!.name) }),
    ];
  });
  return seen && kept.length > 0 && sentences(seen, listText(kept));
}

/** How much of the outline is seen that folded corners show; empty for a piece that is read while walking round. */
export function seenPart(seen: SeenBothWays | undefined): Markup {
  return (
    seen &&
    html`<p class="tagline">${seenWords(seen)}</p>
`
  );
}

function sentences(seen: SeenPicture, levels: string): Html {
  const sum = (of: "wanted" | "hidden" | "unreached"): number => seen.levels.reduce((all, one) => all + one[of], 0);
  const lost = (of: "hidden" | "unreached"): boolean => sum(of) > SLIGHT * sum("wanted");
  const why = [
    ...(lost("hidden") ? [say.kitKeptHidden()] : []),
    ...(lost("unreached") ? [say.kitKeptUnreached()] : []),
  ];
  return html`<p class="tagline">${[say.kitKept({ levels }), ...why].join(" ")}</p>
`;
}
