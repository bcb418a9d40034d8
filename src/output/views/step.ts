import { type Dual, same } from "../../words/dual.ts";
import * as say from "../../words/messages.ts";
import type { StepPart } from "../../words/parts.ts";
import type { Tool } from "../../words/tools.ts";
import type { Figure } from "../drawing/pocket-figure.ts";

/** The part of the work that a step belongs to: the folded book, or what closes and lights it. */
export type StepSection = "book" | "window";

/** One step of the work, with the figures of this kit in it. */
export interface Step {
  readonly section: StepSection;
  readonly title: string;
  readonly text: Dual;
  /** The step in a sentence that holds for every book, for a class's handout. */
  readonly gist: string;
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

/** What a step says: its title, its text (in both unit systems where they differ), its gist. */
export interface StepWords {
  readonly title: string;
  readonly text: Dual | string;
  readonly gist: string;
}

/** Makes a step; what is not stated is empty. */
export function step(
  section: StepSection,
  { title, text, gist }: StepWords,
  rest: Partial<Omit<Step, "section" | keyof StepWords>> = {},
): Step {
  const words = { title, text: typeof text === "string" ? same(text) : text, gist };
  const nothing = { ready: undefined, time: "", parts: [], tools: [], figure: undefined, cautions: [] };
  return { section, ...words, ...nothing, ...rest };
}

/** The heading of a part of the work. */
export function sectionName(section: StepSection): string {
  return section === "book" ? say.stepSectionBook() : say.stepSectionWindow();
}
