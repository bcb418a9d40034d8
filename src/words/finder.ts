import { ASKED, type Asked } from "../core/finder/book-figures.ts";
import type { Known, Verdicts } from "../core/finder/kit-list.ts";
import { FITS, KNIVES, LIGHTS, type QueryRead, SORTS, type Wish } from "../core/finder/query.ts";
import { BOUNDS } from "../core/kit/bounds.ts";
import type { Refit } from "../core/refit/refit.ts";
import { ignoredText, leftOutText } from "./fields.ts";
import { listText } from "./lists.ts";
import * as say from "./messages.ts";

/** What the finder announces: `3 of 4 kits: 1 fits your book as it is, and 2 fit with a change.` */
export function finderSummary(shown: readonly { readonly slug: string }[], all: number, verdicts: Verdicts): string {
  const kits =
    shown.length === all ? say.finderAllKits({ count: all }) : say.finderSomeKits({ shown: shown.length, count: all });
  const isStated = verdicts.size > 0;
  const counted = (["fits", "check", "change", "poor", "no", "unknown", "waiting"] as const).flatMap((kind) => {
    const count = isStated ? shown.filter(({ slug }) => (verdicts.get(slug)?.kind ?? "waiting") === kind).length : 0;
    return count === 0 ? [] : [countWords(kind, count)];
  });
  return counted.length > 0 ? say.finderKitsVerdicts({ kits, verdicts: listText(counted) }) : say.finderKits({ kits });
}

function countWords(kind: Known["kind"] | "waiting", count: number): string {
  switch (kind) {
    case "fits":
      return say.finderCountOwn({ count });
    case "check":
      return say.finderCountCheck({ count });
    case "change":
      return say.finderCountChange({ count });
    case "poor":
      return say.finderCountPoor({ count });
    case "no":
      return say.finderCountNo({ count });
    case "unknown":
      return say.finderCountUnknown({ count });
    case "waiting":
      return say.finderCountWaiting({ count });
  }
}

/** Which figures of the book are still missing, so that each kit's own stand in; empty where none or all are. */
export function missingFigures(book: Refit): string {
  const missing = ASKED.filter((key) => book[key] === undefined);
  if (missing.length === 0 || Object.keys(book).length === 0) return "";
  return say.finderMissing({ figures: listText(missing.map(figureName)) });
}

/** What of an address the finder leaves out, a sentence or two each. */
export function leftOutOf({ ignored, noWishes }: Pick<QueryRead, "ignored" | "noWishes">): string[] {
  return [
    ...ignored.map((one) => ignoredText(one, { levels: [] })),
    ...noWishes.map(({ wish, given }) => leftOutText(WISH_NAMES[wish](), given, allowedFor(wish))),
  ];
}

const WISH_NAMES: Readonly<Record<Wish, () => string>> = {
  hours: say.finderHours,
  levels: say.finderLevels,
  light: say.finderLight,
  knife: say.finderKnife,
  fit: say.finderFit,
  sort: say.finderOrder,
};

function allowedFor(wish: Wish): string {
  switch (wish) {
    case "hours":
      return say.finderHoursAllowed();
    case "levels":
      return say.fitAllowedCount(BOUNDS.levels);
    case "light":
      return LIGHTS.join(", ");
    case "knife":
      return KNIVES.join(", ");
    case "fit":
      return FITS.join(", ");
    case "sort":
      return SORTS.join(", ");
  }
}

function figureName(figure: Asked): string {
  switch (figure) {
    case "leafHeight":
      return say.finderLeafHeight();
    case "leafWidth":
      return say.finderLeafWidth();
    case "blockThickness":
      return say.finderThickness();
    case "leaves":
      return say.finderLeaves();
  }
}
