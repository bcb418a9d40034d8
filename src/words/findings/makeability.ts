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

/** A trouble's figure with a change and without it, as written. */
interface Figures {
  readonly after: string;
  readonly before: string;
}

/** What an author is told on the terminal about the picture on its book, each with the best way out on a line of its own; none where all is well. */
export function makeabilityLines(made: Makeability, telling: Telling): string[] {
  return made.troubles.flatMap(({ trouble, ways }) => {
    const way = wayTexts(trouble, ways, telling)[0];
    const against = againstText(trouble, telling);
    const help = way === undefined ? [] : [say.makeableLineHelp({ against, way })];
    return DOUBTED.includes(trouble.kind)
      ? help
      : [say.makeableLine({ trouble: briefText(trouble, made, telling) }), ...help];
  });
}

/** Troubles in sentences, but those that are told among the warnings already. */
export function newTroubleTexts(
  troubles: readonly Trouble[],
  seen: Pick<Makeability, "seen">,
  telling: Telling,
): string[] {
  return troubles.filter(({ kind }) => !DOUBTED.includes(kind)).map((one) => troubleText(one, seen, telling));
}

/** A trouble in a few words that follow “against”. */
function againstText(trouble: Trouble, { levels }: Telling): string {
  const level = "level" in trouble ? levels[trouble.level - 1]!.name : "";
  switch (trouble.kind) {
    case "hidden":
      return say.makeableAgainstHidden({ level });
    case "out-of-reach":
      return say.makeableAgainstOutOfReach({ level });
    case "slivers":
      return say.makeableAgainstSlivers();
    case "narrow":
      return say.makeableAgainstNarrow();
    case "many-cuts":
      return say.makeableAgainstManyCuts();
    case "springs-open":
      return say.makeableAgainstSpringsOpen();
  }
}

/** Without the places, which the drawing shows. */
function briefText(trouble: Trouble, made: Makeability, telling: Telling): string {
  if (trouble.kind !== "hidden") return troubleText(trouble, made, telling);
  return say.makeableHidden({ percent: shareText(trouble.figure), level: telling.levels[trouble.level - 1]!.name });
}

/** A trouble in a sentence or two. */
export function troubleText(trouble: Trouble, { seen }: Pick<Makeability, "seen">, { units, levels }: Telling): string {
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

/** The ways out of a trouble, but those whose figures read the same with and without them. */
export function wayTexts(trouble: Trouble, ways: readonly WayOut[], telling: Telling): string[] {
  return ways.flatMap((way) => {
    const figures = {
      after: figureText(trouble, way.after, telling),
      before: figureText(trouble, way.before, telling),
    };
    return figures.after === figures.before ? [] : [wayText(trouble, way, figures, telling)];
  });
}

/** A way out with the trouble's figure with it and without it. */
function wayText({ kind }: Trouble, { change, after: count }: WayOut, figures: Figures, telling: Telling): string {
  const told = { offer: changeText(change, telling), ...figures };
  switch (kind) {
    case "hidden":
      return say.makeableWayHidden(told);
    case "out-of-reach":
      return say.makeableWayOutOfReach(told);
    case "slivers":
      return say.makeableWaySlivers(told);
    case "narrow":
      return say.makeableWayNarrow({ ...told, count });
    case "many-cuts":
      return say.makeableWayManyCuts({ ...told, count });
    case "springs-open":
      return say.makeableWaySpringsOpen(told);
  }
}

/** A trouble's figure as it is written. */
function figureText({ kind }: Trouble, figure: number, { units }: Telling): string {
  switch (kind) {
    case "hidden":
    case "slivers":
      return shareText(figure);
    case "out-of-reach":
      return formatSize(figure, units);
    case "springs-open":
      return angleText(figure);
    case "narrow":
    case "many-cuts":
      return decimal(String(figure));
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

/** A change as a button says it. */
export function changeText(change: AuthorChange, { units, levels }: Telling): string {
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
