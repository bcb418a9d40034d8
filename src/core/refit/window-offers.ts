import { isOfLight } from "../findings/failure.ts";
import { BOUNDS, type Bounds } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { largestLight } from "../pattern/compute.ts";
import { effortOf } from "../plan/effort.ts";
import { rulerStep } from "../units/ruler.ts";
import { heightOffer } from "./height-offer.ts";
import type { MadeKit } from "./making.ts";
import { marginsOf } from "./margins.ts";
import type { Change, Offer } from "./offer.ts";
import { judgeFit } from "./quality.ts";
import { type Refit, refitKit } from "./refit.ts";
import type { Trials } from "./trials.ts";

/** A change that lays the picture out, as an offer with which the whole kit fits: with a smaller light where it needs one, none where that does not help. */
export function wholeOffers(
  trials: Trials,
  kit: Kit,
  refit: Refit,
  { says, change }: Change,
  otherBook: boolean,
): Offer[] {
  const changed = { ...refit, ...change };
  const result = trials.whole(refitKit(kit, changed));
  if (!result) return [];
  if (result.fits) return [offerOf(trials, kit, { says, change: changed }, otherBook, result)];
  if (!isOfLight(result.finding)) return [];
  return lightOffers(trials, kit, changed)
    .slice(0, 1)
    .map((light) => ({ ...light, says: [...says, ...light.says], otherBook }));
}

/** Shares of the largest light that are tried. */
const SHARES = [1, 0.9, 0.8, 0.7, 0.6, 0.5];

/** Lights that stand in the reader's book: the widest of this height, the highest of this width. Empty where the light is not what fails. */
export function lightOffers(trials: Trials, kit: Kit, refit: Refit): Offer[] {
  const fitted = refitKit(kit, refit);
  const { light } = fitted;
  const whole = light && trials.whole(fitted);
  if (!light || !whole || whole.fits || !isOfLight(whole.finding)) return [];
  const largest = largestLight(fitted, light);
  const step = rulerStep(fitted.units, "plain");
  const sizes = (most: number, now: number, { least }: Bounds<"length">): number[] =>
    SHARES.map((share) => Math.floor((share * Math.min(most, now)) / step) * step).filter((one) => one >= least);
  return [
    ...firstFitting(trials, kit, refit, sizes(largest.diameter, light.diameter, BOUNDS.lightDiameter), (diameter) => ({
      says: [{ kind: "light-width", diameter }],
      change: { lightDiameter: diameter },
    })),
    ...firstFitting(trials, kit, refit, sizes(largest.height, light.height, BOUNDS.lightHeight), (height) => ({
      says: [{ kind: "light-height", height }],
      change: { lightHeight: height },
    })),
  ];
}

function firstFitting(
  trials: Trials,
  kit: Kit,
  refit: Refit,
  sizes: readonly number[],
  changeOf: (size: number) => Change,
): Offer[] {
  for (const size of sizes) {
    const { says, change } = changeOf(size);
    const changed = { ...refit, ...change };
    const result = trials.whole(refitKit(kit, changed));
    if (result?.fits) return [offerOf(trials, kit, { says, change: changed }, false, result)];
  }
  return [];
}

/** Where nothing else helps: the nearest higher picture with which the whole kit fits, room for light and window included. */
export function higherOffers(trials: Trials, kit: Kit, refit: Refit): Offer[] {
  if (trials.whole(refitKit(kit, refit))?.fits) return [];
  const fits = (change: Partial<Refit>): boolean => {
    const changed = refitKit(kit, { ...refit, ...change });
    return trials.laysOut(changed) && trials.whole(changed)?.fits === true;
  };
  return heightOffer(refitKit(kit, refit), fits, trials.least, [1]).flatMap((change) =>
    wholeOffers(trials, kit, refit, change, false),
  );
}

/** What a maker should know of a change before she takes it; `change` is her whole refit. */
export function offerOf(
  { least }: Trials,
  kit: Kit,
  { says, change: refit }: Change,
  otherBook: boolean,
  result: MadeKit,
): Offer {
  const { fit, book } = result.pattern;
  return {
    says,
    refit,
    otherBook,
    springsOpen: fit.restingOpening > Math.max(Math.PI, fit.opening),
    quality: judgeFit(result, least).kind,
    minutes: effortOf(result.counts(), kit.rates).minutes,
    margins: marginsOf(fit, book.leafHeight),
  };
}
