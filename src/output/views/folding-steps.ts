import type { Kit } from "../../core/kit/kit.ts";
import type { Pocket } from "../../core/light/light.ts";
import { type Pattern, type PatternBase, pictureLeaves } from "../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../core/plan/bench.ts";
import type { Counts } from "../../core/plan/effort.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { leafAndPage } from "../../words/leaves.ts";
import { formatByHand, formatOnRuler } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { foldSteps } from "../drawing/diagrams/fold-steps.ts";
import { holdWidth } from "../drawing/diagrams/hold-width.ts";
import { leafAndPages } from "../drawing/diagrams/leaf-and-pages.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { pocketPlan } from "../drawing/diagrams/pocket-plan.ts";
import { scoring } from "../drawing/diagrams/scoring.ts";
import { tucking } from "../drawing/diagrams/tucking.ts";
import type { Told } from "./step.ts";

/** What the steps from the closed book to the open one say. */
export function foldingText(id: StepId, kit: Kit, pattern: Pattern, { scores, cuts, tacks }: Counts): string {
  const { units } = kit;
  switch (id) {
    case "check":
      return checkText(pattern, units);
    case "find":
      return findText(pattern);
    case "gauge":
      return gaugeText(kit);
    case "score":
      return say.stepScoreText({ count: scores });
    case "borderBefore":
      return borderText(kit.fit.borderLeaves[0], pattern, say.stepBorderBeforeText, units);
    case "borderAfter":
      return borderText(kit.fit.borderLeaves[1], pattern, say.stepBorderAfterText, units);
    case "notch":
      return notchText(pattern.pocket!, units);
    case "tack":
      return say.stepTackText({ count: tacks, with: kit.fit.tackWith });
    case "hold":
      return holdText(pattern, units, pattern.window !== undefined);
    default:
      return foldText(kit, pattern, cuts > 0);
  }
}

/** What they show. */
export function foldingFigure(id: StepId, kit: Kit, pattern: Pattern): Told["figure"] {
  switch (id) {
    case "check":
      return measureBook(kit);
    case "find":
      return leafAndPages(kit, pattern);
    case "gauge":
      return scoring(kit, pattern);
    case "fold":
      return foldSteps(kit, pattern);
    case "notch":
      return pocketPlan(pattern, pattern.pocket!, kit.units);
    case "tack":
      return tucking(kit, pattern);
    case "hold":
      return holdWidth(kit, pattern);
    default:
      return undefined;
  }
}

export function checkText({ book }: PatternBase, units: UnitSystem): string {
  const { leaves, leafHeight, leafWidth, blockThickness } = book;
  return say.stepCheckText({
    leaves,
    height: formatOnRuler(leafHeight, units),
    width: formatOnRuler(leafWidth, units),
    thickness: formatOnRuler(blockThickness, units),
  });
}

export function findText({ leaves: all }: PatternBase): string {
  const leaves = pictureLeaves({ leaves: all });
  const last = leaves.at(-1)!;
  return say.stepFindText({ first: leafAndPage(leaves[0]!), last: leafAndPage(last), page: last.patternPage! });
}

function gaugeText({ levels, units }: Kit): string {
  const lines = levels.map(({ name, line, depth: mm }, i) => {
    const told = { number: i + 1, name, depth: formatOnRuler(mm, units) };
    return line === undefined ? say.stepGaugeFreeLine(told) : say.stepGaugeLine({ ...told, line });
  });
  return say.stepGaugeText({ lines: lines.join("; ") });
}

function borderText(count: number, pattern: Pattern, text: typeof say.stepBorderBeforeText, units: UnitSystem): string {
  const { name: level, depth } = pattern.levels[pattern.background - 1]!;
  return text({ count, level, depth: formatOnRuler(depth, units) });
}

function foldText({ fit: { batch, cutWith }, units }: Kit, pattern: Pattern, cuts: boolean): string {
  const front = pattern.levels[0]!;
  const deepest = formatOnRuler(benchCutDepth(pattern, pattern.levels.at(-1)!.depth), units);
  return cuts && pattern.fit.foldStyle === "stepped"
    ? say.stepFoldTextStepped({ batch, front: front.name, depth: formatOnRuler(front.depth, units), deepest, cutWith })
    : say.stepFoldText({ batch, deepest, cutWith: cuts ? cutWith : "nothing" });
}

function notchText({ notches, floor }: Pocket, units: UnitSystem): string {
  const leaves = { count: notches.length, first: notches[0]?.leaf ?? 0, last: notches.at(-1)?.leaf ?? 0 };
  return say.stepNotchText({ ...leaves, floor: formatOnRuler(floor, units) });
}

export function holdText({ fit }: PatternBase, units: UnitSystem, holder: boolean): string {
  const [width, boards] = [formatByHand(fit.holdWidth, units), formatByHand(fit.boardWidth, units)];
  return say.stepHoldText({ width, boards, holder: holder ? "yes" : "no" });
}
