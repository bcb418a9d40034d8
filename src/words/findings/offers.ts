import type { Offer, OfferedChange } from "../../core/refit/offer.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { hoursText } from "../hours.ts";
import { formatSize } from "../lengths.ts";
import { rowText } from "../lists.ts";
import * as say from "../messages.ts";

/** An offer as it stands on a button or in a list: `Make the picture 105 mm tall`. */
export function offerText({ says, springsOpen }: Pick<Offer, "says" | "springsOpen">, units: UnitSystem): string {
  const text = says
    .map((change) => changeText(change, units))
    .reduce((first, more) => say.offerBoth({ first, more: small(more) }));
  return springsOpen ? say.offerSpringsOpen({ offer: text }) : text;
}

/** What an offer takes and leaves: `About 5 h, with 20 mm free at the head and 24 mm at the tail.` */
export function offerFacts({ quality, minutes, margins: { head, tail } }: Offer, units: UnitSystem): string {
  const [free, below] = [formatSize(head, units), formatSize(tail, units)];
  return say.fitPanelWay({ quality, hours: hoursText(minutes), head: free, tail: below });
}

function changeText(change: OfferedChange, units: UnitSystem): string {
  const size = (mm: number): string => formatSize(mm, units);
  switch (change.kind) {
    case "height":
      return say.offerHeight({ height: size(change.height) });
    case "opening":
      return say.offerOpening({ opening: say.unitDegree({ degrees: change.degrees }) });
    case "borders":
      return say.offerBorders({ before: change.before, after: change.after });
    case "picture-leaves":
      return say.offerPictureLeaves({ leaves: change.leaves });
    case "depths":
      return say.offerDepths({ depths: rowText(change.depths.map(size)) });
    case "folds":
      return say.offerFolds({ style: change.foldStyle });
    case "light-width":
      return say.offerLightWidth({ diameter: size(change.diameter) });
    case "light-height":
      return say.offerLightHeight({ height: size(change.height) });
    case "book": {
      const { leaves } = change;
      const thickness = size(change.thickness);
      return change.bound === "least"
        ? say.offerBookLeast({ leaves, thickness })
        : say.offerBookMost({ leaves, thickness });
    }
  }
}

/** Without a capital, where it goes on after another. */
function small(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
