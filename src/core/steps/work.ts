import type { Kit } from "../kit/kit.ts";
import type { SupplyId } from "../kit/supply-id.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Counts } from "../plan/effort.ts";
import { tackBatches } from "../plan/tack-batches.ts";
import { windowWork } from "./window-work.ts";
import { type WorkStep, workStep } from "./work-step.ts";

/**
 * The work in the order in which hands do it: nothing is used before it is made, notches and tacks come in their batch,
 * closing border leaves last, and what is glued dries before it is moved (common practice, no source).
 */
export function workOf(kit: Kit, pattern: Pattern, counts: Counts): WorkStep[] {
  return [...bookWork(kit, pattern, counts), ...windowWork(kit, pattern)];
}

function bookWork(kit: Kit, pattern: Pattern, counts: Counts): WorkStep[] {
  const [before, after] = kit.fit.borderLeaves;
  const borders: Partial<WorkStep> = { supplies: ["boneFolder"] };
  return [
    workStep("book", "check", { supplies: ["book", "ruler"] }),
    workStep("book", "find", { supplies: ["slips"] }),
    workStep("book", "gauge", {
      makes: ["gauge"],
      supplies: ["card", "awl", "ruler", "pencil", "scissors"],
      ready: "scores",
    }),
    workStep("book", "score", {
      uses: ["gauge"],
      supplies: ["awl", "ruler", "boneFolder", "packing"],
      stages: ["score"],
      ready: "scores",
    }),
    ...(before > 0 ? [workStep("book", "borderBefore", borders)] : []),
    workStep("book", "fold", {
      supplies: [...(counts.cuts > 0 ? (["ruler", "pencil", ...cutters(kit)] as const) : []), "boneFolder"],
      stages: ["turn", "mark", "cut", "fold", "check"],
    }),
    ...(counts.notches > 0
      ? [workStep("book", "notch", { supplies: ["ruler", "pencil", ...KNIFE], stages: ["notch"] })]
      : []),
    ...(counts.tacks > 0 ? [tackWork(kit, pattern)] : []),
    ...(after > 0 ? [workStep("book", "borderAfter", borders)] : []),
    ...(pattern.window ? [] : [workStep("book", "hold", { supplies: ["ruler", "card"] })]),
  ];
}

/** Minutes in which glued things lie still, over the whole work. */
export function dryingOf(work: readonly WorkStep[]): number {
  return work.reduce((sum, { dries, times }) => sum + dries * times, 0);
}

const KNIFE: readonly SupplyId[] = ["knife", "blades", "mat"];

function cutters({ fit }: Kit): readonly SupplyId[] {
  return fit.cutWith === "scissors" ? ["scissors"] : KNIFE;
}

/** Wet glue holds after a while; a dot of it at once. */
function tackWork({ fit, drying }: Kit, pattern: Pattern): WorkStep {
  const glue = fit.tackWith === "glue";
  return workStep("book", "tack", {
    supplies: glue ? ["glue", "bakingPaper"] : ["glueDots"],
    stages: ["tack"],
    dries: glue ? drying.glue : 0,
    times: tackBatches(pattern, fit.batch),
  });
}
