import type { Stretch } from "../../core/geometry/crossings.ts";
import type { AuthorChange } from "../../core/makeability/change.ts";
import { COMFORTABLE_CUTS } from "../../core/makeability/full-leaves.ts";
import type { Makeability } from "../../core/makeability/makeability.ts";
import type { Trouble } from "../../core/makeability/trouble.ts";
import type { WayOut } from "../../core/makeability/ways.ts";
import { rulerStep } from "../../core/units/ruler.ts";
import { angleText } from "../angles.ts";
import { formatNumber, formatSize } from "../lengths.ts";
import { listText } from "../lists.ts";
import * as say from "../messages.ts";
import { decimal } from "../numbers.ts";
import type { Telling } from "./failure-figures.ts";
import { offerText } from "./offers.ts";

/** Told among the warnings already: only what would help is new. */
const DOUBTED: readonly Trouble["kind"][] = ["out-of-reach", "slivers", "springs-open"];

/** What an author is told on the terminal about the picture on its book, with the best way out; a line each, none where all is well. */
export function makeabilityLines(made: Makeability, telling: Telling): string[] {
  return made.troubles.flatMap(({ trouble, ways }) => {
    const way = ways[0] && wayText(trouble, ways[0], telling);
    if (DOUBTED.includes(trouble.kind)) return way === undefined ? [] : [say.makeableLineHelp({ way })];
    const text = briefText(trouble, made, telling);
    return [way === undefined ? say.makeableLine({ trouble: text }) : say.makeableLineWay({ trouble: text, way })];
  });
}

/** Without the places, which the drawing shows. */
function briefText(trouble: Trouble, made: Makeability, telling: Telling): string {
  if (trouble.kind !== "hidden") return troubleText(trouble, made, telling);
  return say.makeableHidden({ percent: shareText(trouble.figure), level: telling.levels[trouble.level - 1]!.name });
}

/** A trouble in a sentence or two. */
export function troubleText(trouble: Trouble, { seen }: Makeability, { units, levels }: Telling): string {
  const size = (mm: number): string => formatSize(mm, units);
  const name = (level: number): string => levels[level - 1]!.name;
  switch (trouble.kind) {
    case "hidden": {
      const places = placesText(seen!.levels[trouble.level - 1]!.hiddenAt, units);
      const hidden = say.makeableHidden({ percent: shareText(trouble.figure), level: name(trouble.level) });
      return `${hidden} ${say.makeableHiddenAt({ places })}`;
    }
    case "out-of-reach":
      return say.makeableOutOfReach({ level: name(trouble.level), missing: size(trouble.figure) });
    case "slivers": {
      const { strips, places, most, share } = trouble;
      return say.makeableSlivers({ strips, places, level: name(most), percent: shareText(share) });
    }
    case "narrow": {
      const text = say.makeableNarrow({ parts: trouble.figure, pitch: size(trouble.pitch) });
      return trouble.unseen > 0 ? `${text} ${say.makeableNarrowUnseen({ parts: trouble.unseen })}` : text;
    }
    case "many-cuts":
      return say.makeableManyCuts({ leaves: trouble.figure, comfortable: COMFORTABLE_CUTS, most: trouble.most });
    case "springs-open":
      return say.makeableSpringsOpen({ resting: angleText(trouble.resting), by: angleText(trouble.figure) });
  }
}

/** A way out with the trouble's figure with it and without it. */
export function wayText({ kind }: Trouble, { change, before, after }: WayOut, telling: Telling): string {
  const offer = changeText(change, telling);
  const figures = <T>(write: (figure: number) => T): { readonly after: T; readonly before: T } => ({
    after: write(after),
    before: write(before),
  });
  switch (kind) {
    case "hidden":
      return say.makeableWayHidden({ offer, ...figures(shareText) });
    case "out-of-reach":
      return say.makeableWayOutOfReach({ offer, ...figures((mm) => formatSize(mm, telling.units)) });
    case "slivers":
      return say.makeableWaySlivers({ offer, ...figures(shareText) });
    case "narrow":
      return say.makeableWayNarrow({ offer, ...figures(Number) });
    case "many-cuts":
      return say.makeableWayManyCuts({ offer, ...figures(Number) });
    case "springs-open":
      return say.makeableWaySpringsOpen({ offer, ...figures(angleText) });
  }
}

/** A share as a percentage: whole from 1 % on, to the tenth below; what rounds to nothing is “under 0.1%”. */
export function shareText(share: number): string {
  const percent = share * 100;
  const write = (value: number, decimals: number): string =>
    say.unitPercent({ share: decimal(value.toFixed(decimals)) });
  if (percent === 0 || percent >= 0.95) return write(percent, 0);
  return percent < 0.1 ? say.makeableUnder({ share: write(0.1, 1) }) : write(percent, 1);
}

function changeText(change: AuthorChange, { units, levels }: Telling): string {
  switch (change.kind) {
    case "merge-levels":
      return say.makeableMergeLevels({ level: levels[change.level - 1]!.name, into: levels[change.into - 1]!.name });
    case "simplify":
      return say.makeableSimplify({ tolerance: formatSize(change.tolerance, units) });
    default:
      return offerText({ says: [change], springsOpen: false }, units);
  }
}

function placesText(places: readonly Stretch[], units: Telling["units"]): string {
  const step = { units, step: rulerStep(units, "plain") };
  const number = (mm: number): string => formatNumber(mm, step);
  const size = (mm: number): string => `${number(mm)}\u00a0${units}`;
  return listText(
    places.map(({ from, to }) => {
      if (to <= 0) return say.makeableHiddenLeft({ from: number(-to), to: size(-from) });
      if (from >= 0) return say.makeableHiddenRight({ from: number(from), to: size(to) });
      return say.makeableHiddenAcross({ left: size(-from), right: size(to) });
    }),
  );
}
