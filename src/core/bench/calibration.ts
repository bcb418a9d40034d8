import { caliper } from "../book/book.ts";
import { flapBulkFromBatch } from "../fan/resting.ts";
import { type BenchPlan, planThatFits } from "./bench-plan.ts";
import type { Holding } from "./holding.ts";
import type { Measured } from "./progress.ts";

/** More leaf thicknesses than any folded flap counts: a measurement with the book's rest in it, or in another unit. */
const MOST_BULK = 12;

/** What the first batch says about the finished book. */
export interface Calibration extends Holding {
  /** κ: how many leaf thicknesses a flap counts. */
  readonly flapBulk: number;
}

/** What a measured batch may be: so many leaves are `least` thick, mm, before they are folded. */
export interface ThicknessBounds {
  readonly leaves: number;
  readonly least: number;
  readonly most: number;
}

/** Fits the bulk of a flap to a measured batch and works the resting opening out with it; the bounds where the measurement cannot be right. */
export function calibrate(
  { kit, way }: Pick<BenchPlan, "kit" | "way">,
  measured: Measured,
): { readonly calibration: Calibration } | { readonly bounds: ThicknessBounds } {
  const one = caliper(kit.book);
  const flapBulk = flapBulkFromBatch(measured.thickness, measured.leaves, one, measured.flaps);
  if (!(flapBulk >= 0 && flapBulk <= MOST_BULK)) return { bounds: boundsOf(measured, one) };
  const fitted = { ...kit, light: undefined, insert: undefined, fit: { ...kit.fit, flapBulk } };
  return { calibration: { flapBulk, ...planThatFits(way.plan(fitted)).holding } };
}

function boundsOf({ leaves, flaps = leaves }: Measured, one: number): ThicknessBounds {
  return { leaves, least: Math.ceil(leaves * one * 10) / 10, most: (leaves + flaps * MOST_BULK) * one };
}
