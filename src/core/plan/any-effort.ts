import type { Rates } from "../kit/kit.ts";
import type { AnyPattern, CornerLeaf } from "../pattern/corner-pattern.ts";
import type { PatternLeaf } from "../pattern/pattern.ts";
import { cornerCounts, cornerLeafSeconds } from "./corner-effort.ts";
import { type Counts, countsOf } from "./effort.ts";
import { leafMinutes } from "./leaf-effort.ts";

/** Counts of a pattern, whichever way its leaves are made. */
export function countsOfAny(pattern: AnyPattern): Counts {
  return pattern.corner ? cornerCounts(pattern) : countsOf(pattern);
}

/** Minutes of each folded leaf in book order, whichever way it is made; pressing lines is apart. */
export function minutesByLeaf(
  pattern: AnyPattern,
  rates: Rates,
): { readonly leaf: PatternLeaf | CornerLeaf; readonly minutes: number }[] {
  if (!pattern.corner) return leafMinutes(pattern, rates);
  return cornerLeafSeconds(pattern, rates).map(({ leaf, seconds }) => ({ leaf, minutes: seconds / 60 }));
}
