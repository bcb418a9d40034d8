import type { Rates } from "../kit/kit.ts";
import type { Pattern, PatternLeaf } from "../pattern/pattern.ts";
import { isCheckpoint } from "./batches.ts";
import { linesOf } from "./scoring.ts";
import { tackList } from "./tack-list.ts";

/** Folds of a leaf. With stepped folds one of several levels is folded once whole, then once more for each deeper span. */
export function foldsOf(leaf: PatternLeaf, pattern: Pattern): number {
  return pattern.fit.foldStyle === "stepped" && linesOf(leaf, pattern).length > 1
    ? 1 + leaf.spans.filter((span) => span.level > 1).length
    : leaf.spans.length;
}

/** Seconds at the bench for each folded leaf in book order, without score lines, notch and tacks: turning, marks, cuts, folds, check. */
export function leafSeconds(
  pattern: Pattern,
  rates: Rates,
): { readonly leaf: PatternLeaf; readonly seconds: number }[] {
  return pattern.leaves.map((leaf) => ({
    leaf,
    seconds:
      rates.leaf +
      (rates.mark + rates.cut) * leaf.cuts.length +
      rates.fold * foldsOf(leaf, pattern) +
      (isCheckpoint(leaf) ? rates.check : 0),
  }));
}

/** Minutes of each folded leaf in book order once its lines are pressed, with its notch and tacks. */
export function leafMinutes(
  pattern: Pattern,
  rates: Rates,
): { readonly leaf: PatternLeaf; readonly minutes: number }[] {
  const { glued } = tackList(pattern);
  const notched = new Set(pattern.pocket?.notches.map((notch) => notch.leaf));
  return leafSeconds(pattern, rates).map(({ leaf, seconds }) => {
    const tacks = glued.filter((tack) => tack.leaf === leaf).length;
    const notch = notched.has(leaf.leaf) ? rates.notch : 0;
    return { leaf, minutes: (seconds + notch + rates.tack * tacks) / 60 };
  });
}
