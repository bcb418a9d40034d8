import { cornerJson, patternJson } from "../../output/data/pattern-json.ts";
import { type RoundData, roundData } from "../../output/data/round-data.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import { showControls } from "./controls.ts";
import { shared } from "./shared.ts";

shared().show = (stage, template, source) =>
  showControls(stage, template, "own" in source ? ownData(source.own) : source);

/** The same of a reader's book as is published of the kit's own. It is made here, because only this view needs it. */
function ownData({ kit, pattern, findings, supplies, effort }: AnyKitView): RoundData {
  const published = pattern.corner
    ? cornerJson(kit, pattern, findings, supplies, effort)
    : patternJson(kit, pattern, findings, supplies, effort);
  return roundData(JSON.parse(published));
}
