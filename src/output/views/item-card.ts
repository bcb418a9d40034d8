import type { BenchItem, LeavesOfBatch, ScoredRun, WholeStep } from "../../core/bench/bench-item.ts";
import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import { openLeaves, openRun } from "../../core/bench/item-done.ts";
import type { Progress } from "../../core/bench/progress.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { countsOf } from "../../core/plan/effort.ts";
import { tackList } from "../../core/plan/tack-list.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import { leafWords, timeWords } from "../../words/bench.ts";
import { stepGist } from "../../words/gists.ts";
import { hoursText } from "../../words/hours.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { stepPartName } from "../../words/step-parts.ts";
import { sectionName, stepTitle } from "../../words/steps.ts";
import { toolName } from "../../words/tools.ts";
import { foldingText } from "./folding-steps.ts";
import { batchWords, leafWorkTitle } from "./item-name.ts";
import { levelWords, stretchesText } from "./leaf-card.ts";
import { notchText } from "./row.ts";
import { windowText } from "./window-steps.ts";

const MINUTE = 60_000;

/** Everything that is shown of work beside the leaves, as text; lengths in the maker's units. */
export interface ItemCard {
  /** What the title belongs to. */
  readonly of: string;
  readonly title: string;
  /** Paragraph by paragraph what to do. */
  readonly lines: readonly string[];
  /** Leaf by leaf where. */
  readonly leaves: readonly { readonly leaf: string; readonly where: string }[];
  /** Parts that it makes or puts together, and what it is done with; empty where there are none. */
  readonly parts: string;
  readonly tools: string;
  /** How long it takes and dries; empty where nothing is to tell. */
  readonly time: string;
  /** The step's number on the kit's page, from 1. */
  readonly number: number;
}

/** The card of other work that lies on the bench; `stepText` says what a whole step tells. */
export function itemCard<Found extends AnyPattern>(
  plan: BenchPlan<Found>,
  progress: Progress,
  item: BenchItem,
  { style, stepText }: { readonly style: LengthStyle; readonly stepText: StepText<Found> },
): ItemCard {
  const { makes, uses, supplies, dries } = item.step;
  const told =
    item.kind === "step"
      ? stepTold(item, stepText(item.step.id, plan.kit, plan.pattern))
      : toldOf(cutPlan(plan), progress, item, style);
  return {
    ...told,
    parts: rowText([...makes, ...uses].map(stepPartName)),
    tools: rowText(supplies.map(toolName)),
    number: 1 + plan.work.findIndex(({ id }) => id === item.step.id),
    time: [
      ...(item.estimate >= MINUTE ? [say.stepTime({ time: estimateText(item) })] : []),
      ...(dries > 0 ? [say.stepDrying({ times: 1, time: hoursText(dries) })] : []),
    ].join(", "),
  };
}

/** A whole step as on the kit's page, to the quarter hour; a piece of one to the minute. */
function estimateText({ kind, estimate }: BenchItem): string {
  return kind === "step" ? hoursText(estimate / MINUTE) : timeWords(estimate, "about");
}

type Told = Pick<ItemCard, "of" | "title" | "lines" | "leaves">;

/** What a whole step says. */
export type StepText<Found extends AnyPattern> = (id: StepId, kit: Kit, pattern: Found) => string;

/** The words of steps where leaves are cut. */
export const cutStepText: StepText<Pattern> = (id, kit, pattern) =>
  windowText(id, kit, pattern) ?? foldingText(id, kit, pattern, countsOf(pattern));

/** Lines and leaves are work where leaves are cut. @throws Error elsewhere, which is a fault of the program */
function cutPlan(plan: BenchPlan): BenchPlan<Pattern> {
  if (isCut(plan)) return plan;
  throw new Error("work of leaves that are cut, where corners are folded");
}

function isCut(plan: BenchPlan): plan is BenchPlan<Pattern> {
  return plan.pattern.corner === undefined;
}

function toldOf(
  plan: BenchPlan<Pattern>,
  progress: Progress,
  item: Exclude<BenchItem, WholeStep>,
  style: LengthStyle,
): Told {
  return item.kind === "score" ? scoreTold(plan, progress, item, style) : leavesTold(plan, progress, item, style);
}

function stepTold({ step }: WholeStep, text: string): Told {
  return { of: sectionName(step.section), title: stepTitle(step.id), lines: [text], leaves: [] };
}

/** The leaves that still need the line; all of them once they have it. */
function scoreTold(plan: BenchPlan<Pattern>, progress: Progress, item: ScoredRun, { units }: LengthStyle): Told {
  const { first, last } = openRun(progress, item) ?? item.run;
  const leaves = { count: last - first + 1, first: leafWords(plan, first), last: leafWords(plan, last) };
  return {
    of: stepTitle(item.step.id),
    title: say.benchScoreLevel({ number: item.level, level: levelWords(plan.pattern, item.level, units) }),
    lines: [say.benchScoreRun(leaves), stepGist(item.step.id)],
    leaves: [],
  };
}

/** The leaves that are still to be notched or tacked; all of them once they are. */
function leavesTold(plan: BenchPlan<Pattern>, progress: Progress, item: LeavesOfBatch, style: LengthStyle): Told {
  const open = openLeaves(progress, item);
  const leaves = open.length > 0 ? open : item.leaves;
  return {
    of: batchWords(plan, item),
    title: leafWorkTitle(item),
    lines: [leafWorkText(plan, item)],
    leaves: leaves.map((leaf) => ({ leaf: leafWords(plan, leaf), where: whereText(plan, item, leaf, style) })),
  };
}

function leafWorkText({ kit, pattern }: BenchPlan<Pattern>, { work, leaves }: LeavesOfBatch): string {
  if (work === "notch") return stepGist(work);
  const tacks = tackList(pattern).glued.filter((tack) => leaves.includes(tack.leaf.leaf)).length;
  return say.stepTackText({ count: tacks, with: kit.fit.tackWith });
}

function whereText(
  { pattern }: BenchPlan<Pattern>,
  { work }: LeavesOfBatch,
  leaf: LeafNumber,
  style: LengthStyle,
): string {
  if (work === "tack") {
    return stretchesText(
      tackList(pattern).glued.filter((tack) => tack.leaf.leaf === leaf),
      style,
    );
  }
  const { from, to, depth } = notchText(
    pattern.pocket?.notches.find((notch) => notch.leaf === leaf),
    style,
  )!;
  const unit = (text: string): string => `${text}\u00a0${style.units}`;
  return say.benchNotchPlace({ from, to: unit(to), depth: unit(depth) });
}
