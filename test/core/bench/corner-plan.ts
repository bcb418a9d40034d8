import type { BenchPlan } from "../../../src/core/bench/bench-plan.ts";
import { CORNER_WAY } from "../../../src/core/bench/corner-way.ts";
import type { CornerPattern } from "../../../src/core/pattern/corner-pattern.ts";
import { cornerKit } from "../../oracle/corner/corner-kit.ts";
import { valueFrom } from "../findings/made.ts";

/** A kit by hand that is folded by corners, laid out for the bench: leaves 1 to 120, the picture on 5 to 116. */
export function cornerPlan(...given: Parameters<typeof cornerKit>): BenchPlan<CornerPattern> {
  return valueFrom(CORNER_WAY.plan(cornerKit(...given)));
}
