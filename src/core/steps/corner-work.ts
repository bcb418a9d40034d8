import type { Kit } from "../kit/kit.ts";
import type { CornerPattern } from "../pattern/corner-pattern.ts";
import { type MadePart, type WorkStep, workStep } from "./work-step.ts";

/**
 * The work where nothing is cut, in the order in which hands do it: gauges are there before they are used, closing border leaves
 * come last (common practice, no source). Scissors only cut out card.
 */
export function cornerWork(kit: Kit, pattern: CornerPattern): WorkStep[] {
  const [before, after] = kit.fit.borderLeaves;
  const card: readonly MadePart[] = pattern.corner.emptyDepth === undefined ? [] : ["foldingCard"];
  const gauges: readonly MadePart[] = ["cornerGauge", ...card];
  // Leaves that are folded to their middle are marked and folded as the picture is.
  const borders: Partial<WorkStep> =
    card.length > 0
      ? { uses: card, supplies: ["boneFolder"] }
      : { uses: gauges, supplies: ["ruler", "pencil", "boneFolder"] };
  return [
    workStep("book", "check", { supplies: ["book", "ruler"] }),
    workStep("book", "find", { supplies: ["slips"] }),
    workStep("book", "cornerGauge", { makes: gauges, supplies: ["card", "scissors"] }),
    ...(before > 0 ? [workStep("book", "borderBefore", borders)] : []),
    workStep("book", "corners", {
      uses: gauges,
      supplies: ["ruler", "pencil", "boneFolder"],
      stages: ["turn", "mark", "fold", "check"],
    }),
    ...(after > 0 ? [workStep("book", "borderAfter", borders)] : []),
    workStep("book", "hold", { supplies: ["ruler", "card"] }),
  ];
}
