import { asCutKit } from "../kit/cut-kit.ts";
import type { Kit } from "../kit/kit.ts";
import type { FitResult } from "../pattern/compute.ts";
import { fitKit } from "../pattern/fit-kit.ts";
import type { PatternBase } from "../pattern/pattern.ts";
import { type Counts, countsOf } from "../plan/effort.ts";

type Fits = Extract<FitResult<PatternBase>, { readonly fits: true }>;

/** A kit as it is made on a book, and how much work it is. */
export interface MadeKit extends Fits {
  readonly counts: () => Counts;
}

/** The kit as it is made, or why it cannot be. */
export type Made = MadeKit | Exclude<FitResult<PatternBase>, Fits>;

/**
 * Makes a kit on its book. Whoever asks for offers says how kits are made, as folding by corners is code of its own that a
 * page fetches when it is asked for: `makeCut` here, `makeAny` in any-making.ts.
 */
export type Making = (kit: Kit) => Made;

/** Makes kits that are cut. @throws Error for others, which is a fault of the program */
export const makeCut: Making = (kit) => counted(fitKit(asCutKit(kit)), countsOf);

/** A result with its work, which is counted when it is asked for. */
export function counted<Found extends PatternBase>(
  result: FitResult<Found>,
  countsIn: (pattern: Found) => Counts,
): Made {
  return result.fits ? { ...result, counts: () => countsIn(result.pattern) } : result;
}
