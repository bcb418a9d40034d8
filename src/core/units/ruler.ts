import { MM_PER_INCH, type UnitSystem } from "./length.ts";

/** How fine a step is: as fine as rulers show, plain, or coarse enough for what is no mark. */
export type Fineness = "fine" | "plain" | "coarse";

const STEPS: Readonly<Record<UnitSystem, Readonly<Record<Fineness, number>>>> = {
  mm: { fine: 0.5, plain: 1, coarse: 1 },
  in: { fine: MM_PER_INCH / 32, plain: MM_PER_INCH / 16, coarse: MM_PER_INCH / 8 },
};

/** A step that a ruler in these units shows, mm. */
export function rulerStep(units: UnitSystem, fineness: Fineness): number {
  return STEPS[units][fineness];
}
