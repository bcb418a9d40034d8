import type { StepId, WorkStep } from "./work-step.ts";

/** A stage of the work, as a maker plans her evenings: steps that belong together. */
export type StageId = "prepare" | "score" | "fold" | "finish" | "open" | "window" | "light";

/** A stage with its steps, which are never none. */
export interface Stage {
  readonly id: StageId;
  readonly steps: readonly WorkStep[];
}

/** The stages of a piece's work, in the order in which it comes to each first. Notches and tacks are done batch by batch while the leaves are folded. */
export function stagesOf(work: readonly WorkStep[]): Stage[] {
  const ids = [...new Set(work.map(stageOf))];
  return ids.map((id) => ({ id, steps: work.filter((step) => stageOf(step) === id) }));
}

/** The stage that a step belongs to. */
export function stageOf({ id, section }: Pick<WorkStep, "id" | "section">): StageId {
  if (section === "window") return id === "light" ? "light" : "window";
  return STAGES[id] ?? "prepare";
}

const STAGES: Partial<Readonly<Record<StepId, StageId>>> = {
  score: "score",
  borderBefore: "fold",
  fold: "fold",
  corners: "fold",
  borderAfter: "fold",
  notch: "finish",
  tack: "finish",
  hold: "open",
};
