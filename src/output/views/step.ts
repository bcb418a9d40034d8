import { type Dual, same } from "../../words/dual.ts";
import type { StepPart } from "../../words/step-parts.ts";
import { type StepId, type StepSection, stepTitle } from "../../words/steps.ts";
import type { Tool } from "../../words/tools.ts";
import type { Figure } from "../drawing/figure.ts";

/** One step of the work, with the figures of this kit in it. */
export interface Step {
  readonly id: StepId;
  readonly section: StepSection;
  readonly title: string;
  readonly text: Dual;
  /** The stage that a teacher may have ready, so that nothing is left to do here. */
  readonly ready: "scores" | "parts" | undefined;
  /** Estimated time, or empty. */
  readonly time: string;
  readonly parts: readonly StepPart[];
  readonly tools: readonly Tool[];
  readonly figure: Figure | undefined;
  /** Ids of the cautions that belong to it. */
  readonly cautions: readonly string[];
}

/** Makes a step; what is not stated is empty. The text is in both unit systems where they differ. */
export function step(
  section: StepSection,
  id: StepId,
  text: Dual | string,
  rest: Partial<Omit<Step, "section" | "id" | "title" | "text">> = {},
): Step {
  const nothing = { ready: undefined, time: "", parts: [], tools: [], figure: undefined, cautions: [] };
  return { section, id, title: stepTitle(id), text: typeof text === "string" ? same(text) : text, ...nothing, ...rest };
}
