import type { LeafNumber } from "../book/leaf-number.ts";
import type { Failure } from "../findings/failure.ts";
import type { Outcome } from "../findings/outcome.ts";
import { isCutKit } from "../kit/cut-kit.ts";
import type { Kit } from "../kit/kit.ts";
import type { FitResult } from "../pattern/compute.ts";
import { fitKit } from "../pattern/fit-kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { type Batch, batchesOf } from "../plan/batches.ts";
import { revisionOf } from "../revision.ts";
import { stepFor } from "../units/length.ts";
import { leafEstimates } from "./leaf-estimates.ts";
import { otherWork } from "./other-work.ts";
import { type Place, placesOf } from "./places.ts";

/** Of a kit whose corners are folded. */
const FOLDED_ONLY: Failure = { kind: "needs-knife", part: "bench" };

/** The work on a kit in the order in which it comes under the hand, with batches and estimates. */
export interface BenchPlan {
  readonly kit: Kit;
  readonly pattern: Pattern;
  /** Every folded leaf in book order. */
  readonly stops: readonly LeafNumber[];
  /** The leaves with all other work among them. */
  readonly places: readonly Place[];
  readonly batches: readonly Batch[];
  /** Of each leaf, ms. */
  readonly estimates: ReadonlyMap<LeafNumber, number>;
}

/**
 * Lays the bench work of a kit out, or says why it cannot be; marks are at the step that a ruler in its units has. A window
 * that cannot be cut is left out: it is no reason not to fold.
 */
export function planBench(kit: Kit): Outcome<BenchPlan> {
  const whole = atRulerStep(kit);
  const result = whole.fits || !kit.insert ? whole : atRulerStep({ ...kit, insert: undefined });
  if (!result.fits) return { failure: result.finding };
  const { pattern } = result;
  const stops = pattern.leaves.map((leaf) => leaf.leaf);
  const batches = batchesOf(pattern, kit.fit.batch, kit.gaugeTile);
  return {
    value: {
      kit,
      pattern,
      stops,
      places: placesOf(stops, otherWork(kit, pattern, batches)),
      batches,
      estimates: leafEstimates(pattern, kit.rates),
    },
  };
}

function atRulerStep(kit: Kit): FitResult {
  if (!isCutKit(kit)) return { fits: false, finding: FOLDED_ONLY };
  const result = fitKit(kit);
  const markStep = stepFor(kit.units, kit.fit.markStep);
  if (!result.fits || Math.abs(markStep - kit.fit.markStep) < 1e-6) return result;
  return fitKit({ ...kit, fit: { ...kit.fit, markStep, head: result.pattern.fit.head } });
}

/** The leaf itself where it is folded, else the next one that is, else the last. */
export function nearestStop(plan: BenchPlan, leaf: LeafNumber): LeafNumber {
  return plan.stops.find((stop) => stop >= leaf) ?? plan.stops.at(-1)!;
}

/** Tells whether a kit's pattern is still the one that work began with. Lost leaves and units do not count. */
export function patternRevision(kit: Kit): Outcome<string> {
  const begun = { ...kit, insert: undefined, fit: { ...kit.fit, lostLeaves: [] } };
  if (!isCutKit(begun)) return { failure: FOLDED_ONLY };
  const result = fitKit(begun);
  if (!result.fits) return { failure: result.finding };
  return { value: revisionOf(result.pattern.leaves.map(({ leaf, spans }) => [leaf, spans])) };
}
