import { ASKED, type Asked } from "../core/finder/book-figures.ts";
import type { Known, Verdicts } from "../core/finder/kit-list.ts";
import type { Refit } from "../core/refit/refit.ts";
import { listText } from "./lists.ts";
import * as say from "./messages.ts";

/** What the finder announces: `3 of 4 kits: 1 fits your book as it is, and 2 fit with a change.` */
export function finderSummary(shown: readonly { readonly slug: string }[], all: number, verdicts: Verdicts): string {
  const kits =
    shown.length === all ? say.finderAllKits({ count: all }) : say.finderSomeKits({ shown: shown.length, count: all });
  const counted = (["fits", "check", "change", "no", "unknown"] as const).flatMap((kind) => {
    const count = shown.filter((kit) => verdicts.get(kit.slug)?.kind === kind).length;
    return count === 0 ? [] : [countWords(kind, count)];
  });
  return counted.length > 0 ? say.finderKitsVerdicts({ kits, verdicts: listText(counted) }) : say.finderKits({ kits });
}

function countWords(kind: Known["kind"], count: number): string {
  switch (kind) {
    case "fits":
      return say.finderCountOwn({ count });
    case "check":
      return say.finderCountCheck({ count });
    case "change":
      return say.finderCountChange({ count });
    case "no":
      return say.finderCountNo({ count });
    case "unknown":
      return say.finderCountUnknown({ count });
  }
}

/** Which figures of the book are still missing, so that each kit's own stand in; empty where none or all are. */
export function missingFigures(book: Refit): string {
  const missing = ASKED.filter((key) => book[key] === undefined);
  if (missing.length === 0 || Object.keys(book).length === 0) return "";
  return say.finderMissing({ figures: listText(missing.map(figureName)) });
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
