import type { Stage } from "../core/steps/stages.ts";
import * as say from "./messages.ts";
import { stepTitle } from "./steps.ts";

/** What a stage is called: by its step where it is a single one. */
export function stageTitle({ id, steps }: Stage): string {
  return steps.length === 1 ? stepTitle(steps[0]!.id) : say.makeStage({ stage: id });
}
