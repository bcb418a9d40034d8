import { isContradiction } from "../findings/failure.ts";
import { openingOf } from "../fit/shape.ts";
import { nearestCount } from "../geometry/nearest.ts";
import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { tryFit } from "../pattern/compute.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import { toDegrees } from "../units/angle.ts";
import { bookOffers } from "./book-offers.ts";
import { depthOffer, shallowerAndLower } from "./depth-offers.ts";
import { heightOffer } from "./height-offer.ts";
import type { Change, Fits, Offer } from "./offer.ts";
import { type Refit, refitKit } from "./refit.ts";
import { Trials } from "./trials.ts";
import { higherOffers, lightOffers, wholeOffers } from "./window-offers.ts";

/**
 * The nearest changes with which the whole kit, light and window included, fits the reader's book, each by itself: another
 * height, another opening, other borders, shallower levels, the other fold style, another count of leaves, a smaller light.
 * Empty where nothing of these helps, or where it was not found among so many leaves as `Trials` lays out.
 */
export function offersFor(kit: Kit, refit: Refit): Offer[] {
  const fitted = refitKit(kit, refit);
  const failure = tryFit(fitted);
  if (failure && isContradiction(failure)) return [];
  const trials = new Trials();
  const offers = failure ? layoutOffers(trials, kit, fitted, refit) : lightOffers(trials, kit, refit);
  return offers.length > 0 ? offers : higherOffers(trials, kit, refit);
}

/** Where the picture cannot be laid out. */
function layoutOffers(trials: Trials, kit: Kit, fitted: Kit, refit: Refit): Offer[] {
  const fits: Fits = (change) => trials.laysOut(refitKit(kit, { ...refit, ...change }));
  const inThisBook = [
    ...heightOffer(fitted, fits),
    ...openingOffer(fitted, fits),
    ...borderOffer(fitted, fits),
    ...depthOffer(fitted, fits),
    ...foldOffer(fitted, fits),
  ];
  const changes = inThisBook.length > 0 ? inThisBook : shallowerAndLower(fitted, fits);
  return [
    ...changes.flatMap((change) => wholeOffers(trials, kit, refit, change, false)),
    ...bookOffers(fitted, fits).flatMap((change) => wholeOffers(trials, kit, refit, change, true)),
  ];
}

/** To the degree, where the kit states its opening: the nearest that fits, narrower or wider. */
function openingOffer(kit: Kit, fits: Fits): Change[] {
  const stated = openingOf(kit.fit.shape);
  if (stated === undefined) return [];
  const now = toDegrees(stated);
  const allowed = (openingDegrees: number): boolean => fits({ openingDegrees });
  const narrower = nearestCount(Math.ceil(now), -1, BOUNDS.opening.least, allowed);
  const wider = nearestCount(Math.floor(now), 1, BOUNDS.opening.most, allowed);
  const nearest = [narrower, wider]
    .filter((one) => one !== undefined)
    .toSorted((a, b) => Math.abs(a - now) - Math.abs(b - now))[0];
  if (nearest === undefined) return [];
  return [{ says: [{ kind: "opening", degrees: nearest }], change: { openingDegrees: nearest } }];
}

/** As many leaves less, or else more, at each end. */
function borderOffer(kit: Kit, fits: Fits): Change[] {
  const [before, after] = kit.fit.borderLeaves;
  const { most } = BOUNDS.borderLeaves;
  const by = (more: number): readonly [number, number] => [Math.max(0, before + more), Math.max(0, after + more)];
  const allowed = (more: number): boolean => fits({ borderLeaves: by(more) });
  const more =
    nearestCount(0, -1, -Math.max(before, after), allowed) ??
    nearestCount(
      0,
      1,
      Math.min(most - Math.max(before, after), Math.floor((kit.book.leaves - before - after) / 2)),
      allowed,
    );
  if (more === undefined) return [];
  const borderLeaves = by(more);
  return [{ says: [{ kind: "borders", before: borderLeaves[0], after: borderLeaves[1] }], change: { borderLeaves } }];
}

function foldOffer(kit: Kit, fits: Fits): Change[] {
  const foldStyle: FoldStyle = kit.fit.foldStyle === "single" ? "stepped" : "single";
  return fits({ foldStyle }) ? [{ says: [{ kind: "folds", foldStyle }], change: { foldStyle } }] : [];
}
