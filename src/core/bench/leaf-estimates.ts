import type { LeafNumber } from "../book/leaf-number.ts";
import type { Rates } from "../kit/kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { leafSeconds } from "../plan/leaf-effort.ts";

/** Estimated bench time of each leaf by its number, ms: turning, marks, cuts, folds, check. */
export function leafEstimates(pattern: Pattern, rates: Rates): Map<LeafNumber, number> {
  return new Map(leafSeconds(pattern, rates).map(({ leaf, seconds }) => [leaf.leaf, 1000 * seconds]));
}
