import { countsOf, effortOf } from "../../../core/plan/effort.ts";
import { patternJson } from "../../../output/data/pattern-json.ts";
import { roundData } from "../../../output/data/round-data.ts";
import { roundPart } from "../../../output/parts/round.ts";
import { type Standpoint, showControls } from "../../view3d/controls.ts";
import type { Shown } from "./shown.ts";

/** Puts the piece in the round into a stage, and gives back what takes it away. @throws Error where WebGL 2 is missing */
export function showRound(stage: HTMLElement, { kit, pattern, findings }: Shown, standpoint: Standpoint): () => void {
  const parts = document.createElement("div");
  parts.innerHTML = String(roundPart({ kit, pattern }));
  const template = parts.querySelector<HTMLTemplateElement>("[data-round-template]")!;
  const published = patternJson(kit, pattern, findings, [], effortOf(countsOf(pattern), kit.rates));
  return showControls(stage, template, roundData(JSON.parse(published)), standpoint);
}
