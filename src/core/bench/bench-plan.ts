import type { LeafNumber } from "../book/leaf-number.ts";
import type { Fan } from "../fan/fan.ts";
import { isFailure, type Outcome } from "../findings/outcome.ts";
import type { Kit, Rates } from "../kit/kit.ts";
import type { FitResult } from "../pattern/compute.ts";
import type { AnyPattern } from "../pattern/corner-pattern.ts";
import type { PatternLeafBase } from "../pattern/pattern.ts";
import { type Batch, batchesOf } from "../plan/batches.ts";
import { revisionOf } from "../revision.ts";
import type { WorkStep } from "../steps/work-step.ts";
import { stepFor } from "../units/length.ts";
import type { OtherWork } from "./beside-leaves.ts";
import { type Holding, holdingOf } from "./holding.ts";
import { type Place, placesOf } from "./places.ts";

/** The work on a kit in the order in which it comes under the hand, with batches and estimates. */
export interface BenchPlan<Found extends AnyPattern = AnyPattern> {
  /** How its leaves are made. */
  readonly way: BenchWay<Found>;
  readonly kit: Kit;
  readonly pattern: Found;
  /** The steps of the work, as the kit's page has them. */
  readonly work: readonly WorkStep[];
  /** Every folded leaf in book order. */
  readonly stops: readonly LeafNumber[];
  /** The leaves with all other work among them. */
  readonly places: readonly Place[];
  readonly batches: readonly Batch<PatternLeafBase>[];
  /** Of each leaf, ms. */
  readonly estimates: ReadonlyMap<LeafNumber, number>;
  /** How wide the folded book stands. */
  readonly holding: Holding;
}

/**
 * Lays kits out whose leaves are made in one way. Whoever opens a desk says in which, as folding by corners is code of its own
 * that a page fetches when it is asked for: `CUT_WAY` in cut-way.ts, `CORNER_WAY` in corner-way.ts.
 */
export interface BenchWay<Found extends AnyPattern = AnyPattern> {
  /**
   * Lays the bench work of a kit out, or says why it cannot be; marks are at the step that a ruler in its units has. A window
   * that cannot be cut is left out: it is no reason not to fold.
   */
  readonly plan: (kit: Kit) => Outcome<BenchPlan<Found>>;
  /** Tells whether a kit's pattern is still the one that work began with. Lost leaves and units do not count. */
  readonly revision: (kit: Kit) => Outcome<string>;
}

/** What laying out has to know of patterns of one kind. */
export interface LeafHand<Found extends AnyPattern> {
  readonly make: (kit: Kit) => FitResult<Found>;
  readonly work: (kit: Kit, pattern: Found) => readonly WorkStep[];
  /** What is to do beside folding. */
  readonly beside: (kit: Kit, pattern: Found, laid: Pick<BenchPlan, "work" | "batches">) => OtherWork;
  /** Estimated bench time of each leaf by its number, ms: turning, marks, cuts, folds, check. */
  readonly estimates: (pattern: Found, rates: Rates) => ReadonlyMap<LeafNumber, number>;
  /** Hold width of the folded book in a fan, mm. */
  readonly holdWidth: (fan: Fan, pattern: Found) => number;
  /** Everything that is folded on each leaf. */
  readonly folds: (pattern: Found) => readonly unknown[];
}

/** The way of a hand. */
export function benchWay<Found extends AnyPattern>(hand: LeafHand<Found>): BenchWay<Found> {
  const way: BenchWay<Found> = {
    plan: (kit) => {
      const whole = atRulerStep(hand, kit);
      const result = whole.fits || !kit.insert ? whole : atRulerStep(hand, { ...kit, insert: undefined });
      return result.fits ? { value: laidOut(way, hand, kit, result.pattern) } : { failure: result.finding };
    },
    revision: (kit) => {
      const result = hand.make({ ...kit, insert: undefined, fit: { ...kit.fit, lostLeaves: [] } });
      return result.fits ? { value: revisionOf(hand.folds(result.pattern)) } : { failure: result.finding };
    },
  };
  return way;
}

function laidOut<Found extends AnyPattern>(
  way: BenchWay<Found>,
  hand: LeafHand<Found>,
  kit: Kit,
  pattern: Found,
): BenchPlan<Found> {
  const stops = pattern.leaves.map((leaf) => leaf.leaf);
  const work = hand.work(kit, pattern);
  const batches = batchesOf<PatternLeafBase>(pattern, kit.fit.batch, kit.gaugeTile);
  return {
    way,
    kit,
    pattern,
    work,
    stops,
    places: placesOf(stops, hand.beside(kit, pattern, { work, batches })),
    batches,
    estimates: hand.estimates(pattern, kit.rates),
    holding: holdingOf(pattern, (fan) => hand.holdWidth(fan, pattern)),
  };
}

function atRulerStep<Found extends AnyPattern>({ make }: LeafHand<Found>, kit: Kit): FitResult<Found> {
  const result = make(kit);
  const markStep = stepFor(kit.units, kit.fit.markStep);
  if (!result.fits || Math.abs(markStep - kit.fit.markStep) < 1e-6) return result;
  return make({ ...kit, fit: { ...kit.fit, markStep, head: result.pattern.fit.head } });
}

/** The leaf itself where it is folded, else the next one that is, else the last. */
export function nearestStop(plan: Pick<BenchPlan, "stops">, leaf: LeafNumber): LeafNumber {
  return plan.stops.find((stop) => stop >= leaf) ?? plan.stops.at(-1)!;
}

/** A plan that must be there. @throws Error where it is not, which is a fault of the program */
export function planThatFits(outcome: Outcome<BenchPlan>): BenchPlan {
  if (isFailure(outcome)) throw new Error(`a kit on the bench does not fit its book: ${outcome.failure.kind}`);
  return outcome.value;
}
