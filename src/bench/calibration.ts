import { caliper } from "../book/book.ts";
import { fanOf } from "../drawing/fan-of.ts";
import { holdWidth } from "../fan/front.ts";
import { flapBulkFromBatch } from "../fan/resting.ts";
import type { Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import { formatLength } from "../units/length.ts";
import type { Measured } from "./progress.ts";

/** More leaf thicknesses than any folded flap counts: a measurement with the book's rest in it, or in another unit. */
const MOST_BULK = 12;

/** What the first batch says about the finished book. Angles radians, widths mm. */
export interface Calibration {
  /** κ: how many leaf thicknesses a flap counts. */
  readonly flapBulk: number;
  readonly opening: number;
  readonly restingOpening: number;
  /** First to last picture leaf's front tips at the wanted opening. */
  readonly holdWidth: number;
  /** The same where the book rests, when that is wider. */
  readonly restingWidth: number;
  /** Whether the book closes as far as the picture wants. */
  readonly holds: boolean;
}

/** Why a measurement cannot be right: what is allowed. */
export class MeasureError extends Error {}

/** Fits the bulk of a flap to a measured batch and works the resting opening out with it. @throws MeasureError */
export function calibrate(kit: Kit, measured: Measured): Calibration {
  const flapBulk = bulkOf(kit, measured);
  const pattern = computePattern({ ...kit, light: undefined, insert: undefined, fit: { ...kit.fit, flapBulk } });
  const { fit } = pattern;
  const holds = fit.restingOpening <= fit.opening;
  const fan = { ...fanOf(pattern), opening: Math.max(fit.opening, fit.restingOpening) };
  const range = { first: fit.firstLeaf - 1, count: fit.lastLeaf - fit.firstLeaf + 1 };
  return {
    flapBulk,
    opening: fit.opening,
    restingOpening: fit.restingOpening,
    holdWidth: fit.holdWidth,
    restingWidth: holdWidth(fan, range, pattern.levels[0]!.depth),
    holds,
  };
}

function bulkOf(kit: Kit, { leaves, thickness }: Measured): number {
  const one = caliper(kit.book);
  const bulk = flapBulkFromBatch(thickness, leaves, one);
  if (bulk >= 0 && bulk <= MOST_BULK) return bulk;
  const size = (mm: number): string =>
    formatLength(mm, { units: kit.units, step: kit.units === "mm" ? 0.1 : 25.4 / 32 });
  const least = Math.ceil(leaves * one * 10) / 10;
  throw new MeasureError(
    `${size(least)} to ${size(leaves * one * (1 + MOST_BULK))}: ${leaves} leaves of this book are ${size(least)} before they are folded`,
  );
}
