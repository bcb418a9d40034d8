import type { SupplyId } from "../kit/supply-id.ts";
import type { Effort } from "../plan/effort.ts";
import type { Part } from "../window/part.ts";

/** A step of the work. */
export type StepId =
  | "check"
  | "find"
  | "gauge"
  | "cornerGauge"
  | "score"
  | "borderBefore"
  | "fold"
  | "corners"
  | "notch"
  | "tack"
  | "borderAfter"
  | "cut"
  | "hold"
  | "frame"
  | "glaze"
  | "decorate"
  | "hang"
  | "close"
  | "light";

/** The part of the work that a step belongs to: the folded book, or what closes and lights it. */
export type StepSection = "book" | "window";

/** What a step makes, and what later ones then have: the gauge, the corner gauge, the card that whole leaves are folded over, or a part of the window. */
export type MadePart = "gauge" | "cornerGauge" | "foldingCard" | Part;

/** A step with all that the hand needs for it. */
export interface WorkStep {
  readonly id: StepId;
  readonly section: StepSection;
  /** What exists from this step on. */
  readonly makes: readonly MadePart[];
  /** What an earlier step made, and this one works with. */
  readonly uses: readonly MadePart[];
  /** Tools and materials, as the list of supplies has them. */
  readonly supplies: readonly SupplyId[];
  /** Stages of the estimate that its time is the sum of. */
  readonly stages: readonly (keyof Effort["byStage"])[];
  /** Minutes that it must lie still afterwards, each time. */
  readonly dries: number;
  /** How many times it lies still: once, or in each batch that needs it. */
  readonly times: number;
  /** The stage that a teacher may have ready, so that nothing is left to do here. */
  readonly ready: "scores" | "parts" | undefined;
}

/** Makes a step; what is not stated is nothing. */
export function workStep(
  section: StepSection,
  id: StepId,
  rest: Partial<Omit<WorkStep, "section" | "id">> = {},
): WorkStep {
  const nothing = { makes: [], uses: [], supplies: [], stages: [], dries: 0, times: 1, ready: undefined };
  return { section, id, ...nothing, ...rest };
}
