import type { LeafNumber } from "../book/leaf-number.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import { type Pattern, pictureLeaves } from "../pattern/pattern.ts";
import { type BenchPlan, planBench } from "./bench-plan.ts";

/** What leaving a leaf out, or taking it back in, does to the rest. */
export interface Recovery {
  readonly plan: BenchPlan;
  /** Leaves that are marked, cut or notched otherwise than before; none of them stands before the leaf. */
  readonly changed: readonly LeafNumber[];
}

/** Lays the rest of the picture out anew over the leaves that remain, or says why that cannot be. */
export function recover(before: BenchPlan, lost: readonly LeafNumber[]): Outcome<Recovery> {
  const plan = planBench(withLost(before.kit, lost));
  if (isFailure(plan)) return plan;
  return { value: { plan: plan.value, changed: changedLeaves(before.pattern, plan.value.pattern) } };
}

export function withLost(kit: Kit, lost: readonly LeafNumber[]): Kit {
  return { ...kit, fit: { ...kit.fit, lostLeaves: [...lost].sort((a, b) => a - b) } };
}

/** Leaves of both patterns on which something is done otherwise. */
export function changedLeaves(before: Pattern, after: Pattern): LeafNumber[] {
  const work = workOf(before);
  return [...workOf(after)].filter(([leaf, text]) => work.has(leaf) && work.get(leaf) !== text).map(([leaf]) => leaf);
}

function workOf(pattern: Pattern): Map<LeafNumber, string> {
  const notches = new Map(pattern.pocket?.notches.map(({ leaf, from, to, depth }) => [leaf, [from, to, depth]]));
  return new Map(
    pictureLeaves(pattern).map(({ leaf, spans, cuts }) => [
      leaf,
      JSON.stringify([spans, cuts, notches.get(leaf)], (_, value) =>
        typeof value === "number" ? Number(value.toFixed(3)) : value,
      ),
    ]),
  );
}
