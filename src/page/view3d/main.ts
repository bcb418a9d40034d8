import { patternJson } from "../../output/data/pattern-json.ts";
import { type RoundData, roundData } from "../../output/data/round-data.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { showControls } from "./controls.ts";
import { shared } from "./shared.ts";

shared().show = (stage, template, source) =>
  showControls(stage, template, "own" in source ? ownData(source.own) : source);

/** The same of a reader's book as is published of the kit's own. It is made here, because only this view needs it. */
function ownData({ kit, pattern, findings, supplies, effort }: KitView): RoundData {
  return roundData(JSON.parse(patternJson(kit, pattern, findings, supplies, effort)));
}
