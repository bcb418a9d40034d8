import type { BenchPlan } from "../../../src/core/bench/bench-plan.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import { madePlan } from "./made.ts";

/** A fixture laid out for the bench, in its own units. */
export function fixturePlan(slug: string, refit: Refit = {}): BenchPlan<Pattern> {
  return madePlan(fixtureKit(slug), refit);
}
