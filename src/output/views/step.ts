import type { SupplyId } from "../../core/kit/supply-id.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { MadePart, StepId, StepSection, WorkStep } from "../../core/steps/work-step.ts";
import { hoursText, timeText } from "../../words/hours.ts";
import * as say from "../../words/messages.ts";
import { stepTitle } from "../../words/steps.ts";
import type { Figure } from "../drawing/figure.ts";

/** One step of the work, with the figures of this kit in it. */
export interface Step {
  readonly id: StepId;
  readonly section: StepSection;
  readonly title: string;
  readonly text: string;
  /** The stage that a teacher may have ready, so that nothing is left to do here. */
  readonly ready: WorkStep["ready"];
  /** Estimated time, or empty. */
  readonly time: string;
  /** How long it must lie still afterwards, and how often, in words; or empty. */
  readonly drying: string;
  readonly parts: readonly MadePart[];
  readonly tools: readonly SupplyId[];
  readonly figure: Figure | undefined;
  /** Ids of the cautions that belong to it. */
  readonly cautions: readonly string[];
}

/** What a step says and shows. */
export interface Told {
  readonly text: string;
  readonly figure: Figure | undefined;
}

/** A step of the work with its words. */
export function stepOf(work: WorkStep, { text, figure }: Told, { byStage }: Effort, cautions: readonly string[]): Step {
  const { id, section, ready, makes, uses, supplies: tools, stages, dries, times } = work;
  const minutes = stages.reduce((sum, stage) => sum + byStage[stage], 0);
  return {
    id,
    section,
    title: stepTitle(id),
    text,
    ready,
    time: minutes > 0 ? hoursText(minutes) : "",
    drying: dries > 0 ? say.stepDrying({ time: timeText(dries), times }) : "",
    parts: [...makes, ...uses],
    tools,
    figure,
    cautions,
  };
}
