import { formatLength } from "../../words/lengths.ts";
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

/** Why a measurement cannot be right: what is allowed. */
export class MeasureError extends Error {}

/** Fits the bulk of a flap to a measured batch and works the resting opening out with it. @throws MeasureError */
export function calibrate(kit: Kit, measured: Measured): Calibration {
  const flapBulk = bulkOf(kit, measured);
  const fitted = { ...kit, light: undefined, insert: undefined, fit: { ...kit.fit, flapBulk } };
  const result = computePattern(fitted);
  if (!result.fits) throw new Error(`a kit on the bench does not fit its book: ${result.finding.kind}`);
  return { flapBulk, ...holdingOf(result.pattern) };
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
