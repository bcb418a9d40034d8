import type { MadePart } from "../core/steps/work-step.ts";
import * as say from "./messages.ts";
import { partName } from "./parts.ts";

/** What a step makes or puts together. */
export function stepPartName(part: MadePart): string {
  return part === "gauge" ? say.stepPartGauge() : partName(part);
}
