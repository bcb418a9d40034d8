import type { BenchPlan } from "../core/bench/bench-plan.ts";
import type { Reach } from "../core/bench/reach.ts";
import { leafWords } from "./bench.ts";
import * as say from "./messages.ts";

/** How far the work comes by a time of day that is told as `21:30`. */
export function reachWords(plan: Pick<BenchPlan, "pattern">, { leaf, leaves, end, own }: Reach, time: string): string {
  if (end) return say.benchStopEnd({ time });
  if (leaf === undefined) return say.benchStopNoLeaf({ time });
  return say.benchStopLeaf({ time, leaf: leafWords(plan, leaf), count: leaves, by: own ? "own" : "estimate" });
}
