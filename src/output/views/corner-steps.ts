import type { Kit } from "../../core/kit/kit.ts";
import type { CornerPattern } from "../../core/pattern/corner-pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { StepId, WorkStep } from "../../core/steps/work-step.ts";
import { formatOnRuler } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { cornerSteps } from "../drawing/corner/corner-steps.ts";
import { holdWidth } from "../drawing/diagrams/hold-width.ts";
import { leafAndPages } from "../drawing/diagrams/leaf-and-pages.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import type { Figure } from "../drawing/figure.ts";
import { cautionsOfSteps } from "./cautions.ts";
import { checkText, findText, holdText } from "./folding-steps.ts";
import { type Step, stepOf } from "./step.ts";

/** What the steps of a kit say whose corners are folded. */
export function cornerStepText(id: StepId, kit: Kit, pattern: CornerPattern): string {
  const { units } = kit;
  const [before, after] = kit.fit.borderLeaves;
  switch (id) {
    case "check":
      return checkText(pattern, units);
    case "find":
      return findText(pattern);
    case "cornerGauge":
      return gaugeText(cardWidth(kit, pattern));
    case "borderBefore":
      return borderText(kit, pattern, before, { card: say.stepBorderCardBefore, middle: say.stepBorderMiddleBefore });
    case "borderAfter":
      return borderText(kit, pattern, after, { card: say.stepBorderCardAfter, middle: say.stepBorderMiddleAfter });
    case "hold":
      return holdText(pattern, units, false);
    default:
      return cornersText(kit, pattern);
  }
}

/** The work in its order with words and figures; `shown` has the marks that a ruler has. */
export function cornerStepsOf(
  kit: Kit,
  { pattern, shown }: { readonly pattern: CornerPattern; readonly shown: CornerPattern },
  work: readonly WorkStep[],
  effort: Effort,
): Step[] {
  const care = cautionsOfSteps(work);
  return work.map((step, i) => {
    const { id } = step;
    const told = { text: cornerStepText(id, kit, pattern), figure: cornerStepFigure(id, kit, shown) };
    return stepOf(step, told, effort, care[i]!);
  });
}

/** What they show. */
export function cornerStepFigure(id: StepId, kit: Kit, pattern: CornerPattern): Figure | undefined {
  switch (id) {
    case "check":
      return measureBook(kit);
    case "find":
      return leafAndPages(kit, pattern);
    case "corners":
      return cornerSteps(kit, pattern);
    case "hold":
      return holdWidth(kit, pattern);
    default:
      return undefined;
  }
}

function cardWidth({ units }: Kit, { corner: { emptyDepth } }: CornerPattern): string | undefined {
  return emptyDepth === undefined ? undefined : formatOnRuler(emptyDepth, units);
}

function gaugeText(depth: string | undefined): string {
  return say.stepCornerGaugeText({ with: depth === undefined ? "gauge" : "card", depth: depth ?? "" });
}

/** Border leaves are folded as leaves are that show nothing. */
function borderText(
  kit: Kit,
  pattern: CornerPattern,
  count: number,
  words: { readonly card: typeof say.stepBorderCardBefore; readonly middle: typeof say.stepBorderMiddleBefore },
): string {
  const depth = cardWidth(kit, pattern);
  if (depth !== undefined) return words.card({ count, depth });
  const border = pattern.leaves.find(({ patternPage }) => patternPage === null)!.fold;
  const middle = border.kind === "middle" ? border.at : 0;
  return words.middle({ count, middle: formatOnRuler(middle, kit.units) });
}

function cornersText({ fit: { batch, corner } }: Kit, { leaves, corner: { turned } }: CornerPattern): string {
  const empty = leaves.some(({ patternPage, fold }) => patternPage !== null && fold.kind !== "corners");
  return [
    say.stepCornersText({ batch }),
    ...(empty ? [say.stepCornersEmpty({ empty: corner.empty === "middle" ? "middle" : "card" })] : []),
    ...(turned > 0 ? [say.stepCornersTurned()] : []),
  ].join(" ");
}
