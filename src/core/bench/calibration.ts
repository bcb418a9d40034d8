import { caliper } from "../book/book.ts";
import { flapBulkFromBatch } from "../fan/resting.ts";
import type { Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import { fanOf } from "../pattern/fan-of.ts";
import { holdWidthOf } from "../pattern/hold-width.ts";
import type { Pattern } from "../pattern/pattern.ts";
import type { Measured } from "./progress.ts";

/** More leaf thicknesses than any folded flap counts: a measurement with the book's rest in it, or in another unit. */
const MOST_BULK = 12;

/** How wide the folded book stands. Angles radians, widths mm. */
export interface Holding {
  readonly opening: number;
  readonly restingOpening: number;
  /** Folded edges of the outer picture leaves at the head, at the wanted opening: the hold width that page and packet give. */
  readonly holdWidth: number;
  /** The same at the opening that the flaps force, when that is wider. */
  readonly restingWidth: number;
  /** Whether the book closes as far as the picture wants. */
  readonly holds: boolean;
}

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
  kit: Kit,
  measured: Measured,
): { readonly calibration: Calibration } | { readonly bounds: ThicknessBounds } {
  const one = caliper(kit.book);
  const flapBulk = flapBulkFromBatch(measured.thickness, measured.leaves, one);
  if (!(flapBulk >= 0 && flapBulk <= MOST_BULK)) return { bounds: boundsOf(measured.leaves, one) };
  const fitted = { ...kit, light: undefined, insert: undefined, fit: { ...kit.fit, flapBulk } };
  const result = computePattern(fitted);
  if (!result.fits) throw new Error(`a kit on the bench does not fit its book: ${result.finding.kind}`);
  return { calibration: { flapBulk, ...holdingOf(result.pattern) } };
}

/** The widths of a pattern as its picture wants them and as its flaps allow them. */
export function holdingOf(pattern: Pattern): Holding {
  const { opening, restingOpening, holdWidth } = pattern.fit;
  const fan = { ...fanOf(pattern), opening: Math.max(opening, restingOpening) };
  return {
    opening,
    restingOpening,
    holdWidth,
    restingWidth: holdWidthOf(fan, pattern.levels, pattern.leaves),
    holds: restingOpening <= opening,
  };
}

function boundsOf(leaves: number, one: number): ThicknessBounds {
  return { leaves, least: Math.ceil(leaves * one * 10) / 10, most: leaves * one * (1 + MOST_BULK) };
}
