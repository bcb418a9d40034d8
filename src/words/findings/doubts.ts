import type { Doubt } from "../../core/findings/doubt.ts";
import { angleText } from "../angles.ts";
import { formatSize, sayLength } from "../lengths.ts";
import { listText } from "../lists.ts";
import * as say from "../messages.ts";
import { decimal } from "../numbers.ts";
import type { Telling } from "./failure-figures.ts";

/** What may disappoint, in sentences for anyone. */
export function doubtText(doubt: Doubt, { units, levels }: Telling): string {
  const size = (mm: number): string => formatSize(mm, units);
  switch (doubt.kind) {
    case "caliper":
      return caliperText(doubt);
    case "unnumbered-leaves": {
      const { lastPage, unnumbered, leaves } = doubt;
      return say.doubtUnnumberedLeaves({ lastPage, unnumbered, leaves, half: Math.ceil(leaves / 2) });
    }
    case "springs-open": {
      const opening = angleText(doubt.opening);
      if (doubt.resting > 2 * Math.PI) return say.doubtSpringsOpenRound({ opening });
      return say.doubtSpringsOpen({ opening, resting: angleText(doubt.resting) });
    }
    case "coarse":
      return say.doubtCoarse({ leaves: doubt.leaves, column: size(doubt.column) });
    case "out-of-shape":
      return shapeText(doubt.stretch);
    case "narrow-floor":
      return say.doubtNarrowFloor({
        level: levels[doubt.level - 1]!.name,
        width: size(doubt.width),
        need: size(doubt.need),
      });
    case "light-wider-than-hole":
      return say.doubtLightWiderThanHole({
        diameter: size(doubt.diameter),
        width: size(doubt.width),
        height: size(doubt.height),
      });
    case "level-out-of-reach":
      return say.doubtLevelOutOfReach({ level: levels[doubt.level - 1]!.name, missing: size(doubt.missing) });
    case "merged-spans":
      return say.doubtMergedSpans({
        spans: doubt.spans,
        leaves: doubt.leaves,
        leastTab: sayLength(doubt.leastTab, units),
      });
    case "left-without-knife":
      return say.doubtLeftWithoutKnife({
        part: doubt.light && doubt.window ? "both" : doubt.light ? "light" : "window",
      });
    case "levels-left-out": {
      const names = doubt.levels.map((level) => say.doubtLevelName({ level: levels[level - 1]!.name }));
      return say.doubtLevelsLeftOut({ count: names.length, levels: listText(names) });
    }
    case "striped":
      return say.doubtStriped({ leaves: doubt.leaves, of: doubt.of });
    case "turns":
      return say.doubtTurns({ leaves: doubt.leaves, most: doubt.most, every: doubt.every });
    case "unseen-parts":
      return say.doubtUnseenParts({ parts: doubt.parts });
    case "steep-creases":
      return say.doubtSteepCreases({ leaves: doubt.leaves, reach: sayLength(doubt.reach, units) });
    case "off-centre":
      return say.doubtOffCentre({ unfolded: doubt.unfolded, before: doubt.before, after: doubt.after });
  }
}

/** The same for a kit's author, with what she can write in the front matter. */
export function authorDoubt(doubt: Doubt, telling: Telling): string {
  const text = doubtText(doubt, telling);
  switch (doubt.kind) {
    case "out-of-shape":
      return `${text} ${say.doubtOutOfShapeDoAuthor()}`;
    case "narrow-floor":
      return `${text} ${say.doubtNarrowFloorDoAuthor()}`;
    case "levels-left-out":
      return `${text} ${say.doubtLevelsLeftOutDoAuthor()}`;
    case "off-centre":
      return `${text} ${say.doubtOffCentreDoAuthor({ before: doubt.before, after: doubt.after })}`;
    default:
      return text;
  }
}

/** Calipers are so thin that they are written in millimetres to the thousandth, bounds as they are. */
function caliperText({ caliper, least, most, leaves }: Extract<Doubt, { readonly kind: "caliper" }>): string {
  const mm = (value: number, decimals: number): string => `${decimal(value.toFixed(decimals))}\u00a0${say.unitMm()}`;
  const figures = { caliper: mm(caliper, 3), least: mm(least, 2), most: mm(most, 2) };
  if (caliper < least) return say.doubtCaliperThin({ ...figures, leaves, half: Math.ceil(leaves / 2) });
  return say.doubtCaliperThick(figures);
}

function shapeText(stretch: number): string {
  const percent = say.unitPercent({ share: decimal(Math.abs((stretch - 1) * 100).toFixed(1)) });
  return stretch > 1 ? say.doubtWiderThanDrawn({ percent }) : say.doubtNarrowerThanDrawn({ percent });
}
