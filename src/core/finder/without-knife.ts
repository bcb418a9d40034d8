import type { Kit } from "../kit/kit.ts";
import { effortOf } from "../plan/effort.ts";
import { makeAny } from "../refit/any-making.ts";
import { refitKit } from "../refit/refit.ts";

/** Minutes of a kit's work on its own book where its leaves are folded by corners, without a knife; undefined where it cannot be made so. */
export function foldedMinutes(kit: Kit): number | undefined {
  const made = makeAny(refitKit(kit, { foldStyle: "corner" }));
  return made.fits ? effortOf(made.counts(), kit.rates).minutes : undefined;
}
