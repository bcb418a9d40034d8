import { cornerWays } from "../../core/makeability/corner-ways.ts";
import { makeabilityOf } from "../../core/makeability/makeability.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import { cornerLines } from "../../words/findings/corner-ways.ts";
import { makeabilityLines } from "../../words/findings/makeability.ts";

/** How well a kit can be made, in lines for its author. Where corners are folded, these are ways out alone: the troubles are warnings. */
export function makeableLines(view: AnyKitView): string[] {
  if (view.way === "cut") return makeabilityLines(makeabilityOf(view), view.kit);
  return cornerLines(cornerWays(view.kit, view.pattern, view.findings), view.kit);
}
