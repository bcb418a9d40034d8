import type { Part } from "../core/window/part.ts";
import * as say from "./messages.ts";
import { partName } from "./parts.ts";

const OTHERS = {
  gauge: say.stepPartGauge,
  button: say.stepPartButton,
  string: say.stepPartString,
  light: say.stepPartLight,
} as const;

/** What a step of the work puts together: a part of the window, or something else that was made or bought. */
export type StepPart = keyof typeof OTHERS | Part;

export function stepPartName(part: StepPart): string {
  return typeof part === "object" ? partName(part) : OTHERS[part]();
}
