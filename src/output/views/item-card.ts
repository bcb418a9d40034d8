import type { BenchItem, ScoredRun } from "../../core/bench/bench-item.ts";
import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import { openRun } from "../../core/bench/item-done.ts";
import type { Progress } from "../../core/bench/progress.ts";
import { countsOf } from "../../core/plan/effort.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { leafWords } from "../../words/bench.ts";
import { stepGist } from "../../words/gists.ts";
import { hoursText } from "../../words/hours.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { sectionName, stepTitle } from "../../words/steps.ts";
import { toolName } from "../../words/tools.ts";
import { foldingText } from "./folding-steps.ts";
import { levelWords } from "./leaf-card.ts";
import { windowText } from "./window-steps.ts";

/** Everything that is shown of work beside the leaves, as text; lengths in the maker's units. */
export interface ItemCard {
  /** What the title belongs to. */
  readonly of: string;
  readonly title: string;
  /** Sentence by sentence what to do. */
  readonly lines: readonly string[];
  /** What it is done with; empty where nothing is needed. */
  readonly tools: string;
  /** How long it takes and dries; empty where nothing is to tell. */
  readonly time: string;
}

/** The card of other work that lies on the bench. */
export function itemCard(plan: BenchPlan, progress: Progress, item: BenchItem, units: UnitSystem): ItemCard {
  const { supplies, dries } = item.step;
  const minutes = item.estimate / 60_000;
  return {
    ...toldOf(plan, progress, item, units),
    tools: rowText(supplies.map(toolName)),
    time: [
      ...(minutes > 0 ? [say.stepTime({ time: hoursText(minutes) })] : []),
      ...(dries > 0 ? [say.stepDrying({ time: hoursText(dries) })] : []),
    ].join(", "),
  };
}

/** Other work in a sentence: its step, and of what where the step has several. */
export function itemName(plan: BenchPlan, item: BenchItem, units: UnitSystem): string {
  const step = stepTitle(item.step.id);
  return item.kind === "score" ? say.benchStepOf({ step, of: levelWords(plan.pattern, item.level, units) }) : step;
}

type Told = Pick<ItemCard, "of" | "title" | "lines">;

function toldOf(plan: BenchPlan, progress: Progress, item: BenchItem, units: UnitSystem): Told {
  return item.kind === "score" ? scoreTold(plan, progress, item, units) : stepTold(plan, item, units);
}

function stepTold({ kit, pattern }: BenchPlan, { step }: BenchItem, units: UnitSystem): Told {
  const { id, section } = step;
  const text = windowText(id, kit, pattern) ?? foldingText(id, kit, pattern, countsOf(pattern));
  return {
    of: sectionName(section),
    title: stepTitle(id),
    lines: [typeof text === "string" ? text : text[units]],
  };
}

/** The leaves that still need the line; all of them once they have it. */
function scoreTold(plan: BenchPlan, progress: Progress, item: ScoredRun, units: UnitSystem): Told {
  const { first, last } = openRun(progress, item) ?? item.run;
  const leaves = { count: last - first + 1, first: leafWords(plan, first), last: leafWords(plan, last) };
  return {
    of: stepTitle(item.step.id),
    title: levelWords(plan.pattern, item.level, units),
    lines: [say.benchScoreRun(leaves), stepGist(item.step.id)],
  };
}
