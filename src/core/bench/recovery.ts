import type { LeafNumber } from "../book/leaf-number.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import type { AnyPattern } from "../pattern/corner-pattern.ts";
import { type Pattern, pictureLeaves } from "../pattern/pattern.ts";
import type { BenchPlan } from "./bench-plan.ts";

/** What leaving a leaf out, or taking it back in, does to the rest. */
export interface Recovery<Found extends AnyPattern = AnyPattern> {
  readonly plan: BenchPlan<Found>;
  /** Leaves that are marked, cut or notched otherwise than before; none of them stands before the leaf. */
  readonly changed: readonly LeafNumber[];
}

/** Lays the rest of the picture out anew over the leaves that remain, or says why that cannot be. */
export function recover<Found extends AnyPattern>(
  before: BenchPlan<Found>,
  lost: readonly LeafNumber[],
): Outcome<Recovery<Found>> {
  const plan = before.way.plan(withLost(before.kit, lost));
  if (isFailure(plan)) return plan;
  return { value: { plan: plan.value, changed: changedLeaves(before.pattern, plan.value.pattern) } };
}

export function withLost(kit: Kit, lost: readonly LeafNumber[]): Kit {
  return { ...kit, fit: { ...kit.fit, lostLeaves: [...lost].sort((a, b) => a - b) } };
}

/** Leaves of both patterns on which something is done otherwise. */
export function changedLeaves(before: AnyPattern, after: AnyPattern): LeafNumber[] {
  const work = workOf(before);
  return [...workOf(after)].filter(([leaf, text]) => work.has(leaf) && work.get(leaf) !== text).map(([leaf]) => leaf);
}

function workOf(pattern: AnyPattern): Map<LeafNumber, string> {
  const works = pattern.corner
    ? pictureLeaves(pattern).map(({ leaf, fold }) => [leaf, fold] as const)
    : cutWork(pattern);
  return new Map(works.map(([leaf, work]) => [leaf, exactly(work)]));
}

function cutWork(pattern: Pattern): (readonly [LeafNumber, unknown])[] {
  const notches = new Map(pattern.pocket?.notches.map(({ leaf, from, to, depth }) => [leaf, [from, to, depth]]));
  return pictureLeaves(pattern).map(({ leaf, spans, cuts }) => [leaf, [spans, cuts, notches.get(leaf)]]);
}

/** As text, lengths to a thousandth of a mm. */
export function exactly(work: unknown): string {
  return JSON.stringify(work, (_, value) => (typeof value === "number" ? Number(value.toFixed(3)) : value));
}
