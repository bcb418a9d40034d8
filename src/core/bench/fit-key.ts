import { caliper } from "../book/book.ts";
import { flapBulkFromBatch } from "../fan/resting.ts";
import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { toAddress } from "../refit/address.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import { tidy, type UnitSystem } from "../units/length.ts";
import { lostOf } from "./lost-leaves.ts";
import type { Measured, Progress } from "./progress.ts";

/**
 * The fit that progress belongs to: the refit's canonical address without what changes while she works (lost leaves, the
 * measured bulk of the flaps) and without the units, which only write the same book otherwise. Empty for the kit's own book.
 */
export function fitOf(refit: Refit): string {
  const { lostLeaves, flapBulk, units, ...fit } = refit;
  return toAddress(fit).toString();
}

/** The refit as it stands now: with the leaves that were lost and, once a batch is measured, the bulk of its flaps. */
export function refitNow(kit: Kit, refit: Refit, progress: Progress): Refit {
  const { lostLeaves, ...rest } = refit;
  const lost = lostOf(progress);
  const { measured } = progress;
  const flapBulk = measured && bulkOf(measured, caliper(refitKit(kit, rest).book));
  return {
    ...rest,
    ...(flapBulk === undefined ? {} : { flapBulk }),
    ...(lost.length > 0 || kit.fit.lostLeaves.length > 0 ? { lostLeaves: lost } : {}),
  };
}

/** Undefined where it is none that the bench would have taken: kept progress may say anything. */
function bulkOf({ thickness, leaves, flaps }: Measured, oneLeaf: number): number | undefined {
  const bulk = tidy(flapBulkFromBatch(thickness, leaves, oneLeaf, flaps), 3);
  return bulk >= BOUNDS.flapBulk.least && bulk <= BOUNDS.flapBulk.most ? bulk : undefined;
}

/** The kit as it is worked at the bench: lengths are in the maker's units. */
export function benchKit(kit: Kit, refit: Refit, units: UnitSystem): Kit {
  return refitKit(kit, { ...refit, units });
}
