import { formatSize } from "../../words/lengths.ts";
import type { Kit } from "../kit/kit.ts";
import { computePattern, largestLight, tryFit } from "../pattern/compute.ts";
import { Problem } from "../problem.ts";
import { heightOffer } from "./height-offer.ts";
import type { Change, Offer } from "./offers.ts";
import { type Refit, refitKit } from "./refit.ts";

/** A change that lays the picture out, as an offer with which the whole kit fits: with a smaller light where it needs one, none where that does not help. */
export function wholeOffers(kit: Kit, refit: Refit, { words, change }: Change, otherBook: boolean): Offer[] {
  const changed = { ...refit, ...change };
  const problem = wholeProblem(kit, changed);
  if (!problem) return [{ words: words + caveat(kit, changed), refit: changed, otherBook }];
  if (!problem.field.startsWith("light")) return [];
  return lightOffers(kit, changed)
    .slice(0, 1)
    .map((light) => ({
      words: `${words}, and ${light.words}${caveat(kit, light.refit)}`,
      refit: light.refit,
      otherBook,
    }));
}

/** Lights that stand in the reader's book: the widest of this height, the highest of this width. Empty where the light is not what fails. */
export function lightOffers(kit: Kit, refit: Refit): Offer[] {
  const fitted = refitKit(kit, refit);
  const { light, units } = fitted;
  if (!light || !wholeProblem(kit, refit)?.field.startsWith("light")) return [];
  const largest = largestLight(fitted, light);
  const step = units === "mm" ? 1 : 25.4 / 16;
  const offer = (key: "lightDiameter" | "lightHeight", most: number, now: number, word: string): Offer[] => {
    const sizes = [1, 0.9, 0.8, 0.7, 0.6, 0.5].map((share) => Math.floor((share * Math.min(most, now)) / step) * step);
    const size = sizes.find((one) => one >= 5 && !wholeProblem(kit, { ...refit, [key]: one }));
    if (size === undefined) return [];
    return [
      { words: `use a light ${formatSize(size, units)} ${word}`, refit: { ...refit, [key]: size }, otherBook: false },
    ];
  };
  return [
    ...offer("lightDiameter", largest.diameter, light.diameter, "wide"),
    ...offer("lightHeight", largest.height, light.height, "high"),
  ];
}

/** Where nothing else helps: the nearest higher picture with which the whole kit fits, room for light and window included. */
export function higherOffers(kit: Kit, refit: Refit): Offer[] {
  if (!wholeProblem(kit, refit)) return [];
  const fits = (change: Partial<Refit>): boolean => {
    const changed = { ...refit, ...change };
    return tryFit(refitKit(kit, changed)) === undefined && wholeProblem(kit, changed) === undefined;
  };
  return heightOffer(refitKit(kit, refit), fits, [1]).map(({ words, change }) => ({
    words,
    refit: { ...refit, ...change },
    otherBook: false,
  }));
}

/** What a maker should know of a change before she takes it: flaps that push the book beyond flat. */
function caveat(kit: Kit, refit: Refit): string {
  const { fit } = computePattern(refitKit(kit, refit));
  return fit.restingOpening > Math.max(Math.PI, fit.opening)
    ? ", though its flaps will push this book open beyond flat"
    : "";
}

function wholeProblem(kit: Kit, refit: Refit): Problem | undefined {
  try {
    computePattern(refitKit(kit, refit));
    return undefined;
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
