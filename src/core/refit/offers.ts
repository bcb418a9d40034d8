import { isContradiction } from "../findings/failure.ts";
import { openingOf } from "../fit/shape.ts";
import { nearestCount } from "../geometry/nearest.ts";
import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { tryFit } from "../pattern/compute.ts";
import { cornerFailure } from "../pattern/limits.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import { toDegrees } from "../units/angle.ts";
import { bookOffers } from "./book-offers.ts";
import { depthOffer, shallowerAndLower } from "./depth-offers.ts";
import { heightOffer } from "./height-offer.ts";
import { type Making, makeCut } from "./making.ts";
import { leastMargins, type Margins } from "./margins.ts";
import type { Change, Fits, Offer } from "./offer.ts";
import { QUALITIES } from "./quality.ts";
import { type Refit, refitKit } from "./refit.ts";
import { Trials } from "./trials.ts";
import { higherOffers, lightOffers, wholeOffers } from "./window-offers.ts";

/** A reader chooses among so many. */
const MOST_OFFERS = 3;

/**
 * At most three ways, the best first: the nearest changes with which the whole kit, light and window included, fits the reader's book, each by itself: another
 * height, another opening, other borders, shallower levels, the other fold style, another count of leaves, a smaller light.
 * Empty where nothing of these helps, or where it was not found among so many leaves as `Trials` lays out.
 */
export function offersFor(kit: Kit, refit: Refit, making: Making = makeCut): Offer[] {
  const fitted = refitKit(kit, refit);
  const failure = tryFit(fitted);
  if (failure && isContradiction(failure)) return [];
  const trials = new Trials(leastMargins(kit), making);
  const offers = failure ? layoutOffers(trials, kit, fitted, refit) : lightOffers(trials, kit, refit);
  return ranked(offers.length > 0 ? offers : higherOffers(trials, kit, refit));
}

/** The best three: those that come out well first, and of equals those in the reader's own book; poor ones where there are no others. */
export function ranked(offers: readonly Offer[]): Offer[] {
  const rank = ({ quality, otherBook }: Offer): number => 2 * QUALITIES.indexOf(quality) + Number(otherBook);
  const good = offers.filter(({ quality }) => quality !== "poor");
  return (good.length > 0 ? good : offers).toSorted((a, b) => rank(a) - rank(b)).slice(0, MOST_OFFERS);
}

/** Whether some change lays the picture out in a reader's own book, so that it may help; what light, window and folds say is not asked. */
export function mayHelp(trials: Trials, kit: Kit, refit: Refit): boolean {
  const fitted = refitKit(kit, refit);
  const fits: Fits = (change) => trials.laysOut(refitKit(kit, { ...refit, ...change }));
  return (
    ownBookChanges(fitted, fits, trials.least).length > 0 || heightOffer(fitted, fits, trials.least, [1]).length > 0
  );
}

/** Where the picture cannot be laid out. */
function layoutOffers(trials: Trials, kit: Kit, fitted: Kit, refit: Refit): Offer[] {
  const fits: Fits = (change) => trials.laysOut(refitKit(kit, { ...refit, ...change }));
  return [
    ...ownBookChanges(fitted, fits, trials.least).flatMap((change) => wholeOffers(trials, kit, refit, change, false)),
    ...bookOffers(fitted, fits).flatMap((change) => wholeOffers(trials, kit, refit, change, true)),
  ];
}

/** Changes with which the picture can be laid out in the same book. */
function ownBookChanges(fitted: Kit, fits: Fits, least: Margins): Change[] {
  const inThisBook = [
    ...heightOffer(fitted, fits, least),
    ...openingOffer(fitted, fits),
    ...borderOffer(fitted, fits),
    ...pictureLeavesOffer(fitted, fits),
    ...depthOffer(fitted, fits),
    ...foldOffer(fitted, fits),
  ];
  return inThisBook.length > 0
    ? inThisBook
    : [...shallowerAndLower(fitted, fits, least), ...fewerAndLower(fitted, fits, least)];
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

/** Whole leaves that an offer leaves at each end, where the kit has so many (common practice, no source). */
const LEAST_BORDER = 2;

/** Borders with so many leaves more at each end, or fewer. */
export function withMore([before, after]: readonly [number, number], more: number): readonly [number, number] {
  const border = (own: number): number => Math.max(Math.min(own, LEAST_BORDER), own + more);
  return [border(before), border(after)];
}

/** As many leaves less, or else more, at each end. */
function borderOffer(kit: Kit, fits: Fits): Change[] {
  const [before, after] = kit.fit.borderLeaves;
  const { most } = BOUNDS.borderLeaves;
  const by = (more: number): readonly [number, number] => withMore([before, after], more);
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

/** Where the kit states how many leaves carry its picture: the nearest fewer, or else more. */
function pictureLeavesOffer(kit: Kit, fits: Fits): Change[] {
  const { shape, borderLeaves } = kit.fit;
  if (shape.solve === "pictureLeaves" || shape.pictureLeaves === "fill") return [];
  const allowed = (pictureLeaves: number): boolean => fits({ pictureLeaves });
  const room = kit.book.leaves - borderLeaves[0] - borderLeaves[1];
  const now = Math.min(shape.pictureLeaves, room + 1);
  const leaves =
    nearestCount(now, -1, BOUNDS.pictureLeaves.least, allowed) ?? nearestCount(shape.pictureLeaves, 1, room, allowed);
  if (leaves === undefined) return [];
  return [{ says: [{ kind: "picture-leaves", leaves }], change: { pictureLeaves: leaves } }];
}

/** Where no single change helps a kit that states more picture leaves than there are: all that there are, and another height. */
function fewerAndLower(kit: Kit, fits: Fits, least: Margins): Change[] {
  const { shape, borderLeaves } = kit.fit;
  const leaves = kit.book.leaves - borderLeaves[0] - borderLeaves[1];
  if (shape.solve === "pictureLeaves" || shape.pictureLeaves === "fill" || shape.pictureLeaves <= leaves) return [];
  return heightOffer(kit, (change) => fits({ ...change, pictureLeaves: leaves }), least).map(({ says, change }) => ({
    says: [{ kind: "picture-leaves", leaves }, ...says],
    change: { ...change, pictureLeaves: leaves },
  }));
}

/** The other way to cut; who folds only is offered cuts where there is no other way at all. */
function foldOffer(kit: Kit, fits: Fits): Change[] {
  if (kit.fit.foldStyle === "corner" && cornerFailure(kit)?.kind !== "background-shown") return [];
  const foldStyle: FoldStyle = kit.fit.foldStyle === "single" ? "stepped" : "single";
  return fits({ foldStyle }) ? [{ says: [{ kind: "folds", foldStyle }], change: { foldStyle } }] : [];
}
