import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import type { Supply } from "../../core/supplies/supply.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import type { Step } from "../../output/views/step.ts";

/** What the page of a piece shows of patterns of one kind; reached as faces are. */
export interface PieceSheets<Found extends AnyPattern = AnyPattern> {
  /** The steps of the work; what draws them is fetched first. */
  steps(plan: BenchPlan<Found>): Promise<readonly Step[]>;
  supplies(plan: BenchPlan<Found>): readonly Supply[];
  /** Markup of the table of the leaves from one to another. */
  table(caption: string, plan: BenchPlan<Found>, range: SheetRange, style: LengthStyle): string;
}

/** Leaf numbers, both counted in. */
export interface SheetRange {
  readonly first: number;
  readonly last: number;
}
