import type { Failure } from "../../core/findings/failure.ts";
import { atOnce, type Steps } from "../../core/in-steps.ts";
import { isCutKit } from "../../core/kit/cut-kit.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { closePattern, type FitResult } from "../../core/pattern/compute.ts";
import { faceOfFitting } from "../../core/pattern/face.ts";
import { fitSteps } from "../../core/pattern/fit-kit.ts";
import { betterOffers } from "../../core/refit/better-offers.ts";
import type { Making } from "../../core/refit/making.ts";
import { leastMargins } from "../../core/refit/margins.ts";
import type { Offer } from "../../core/refit/offer.ts";
import { offersFor } from "../../core/refit/offers.ts";
import { type Judgement, judgeFit } from "../../core/refit/quality.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";
import { type KitView, viewKitWith } from "../../output/views/kit-view.ts";
import type { DrawStep } from "../../output/views/step-drawing.ts";
import type { KitData } from "../shared/kit-data.ts";
import { fetchedStep } from "../shared/step-drawings.ts";

/** A kit's view, or why there is none. */
export type Viewed<View> = { readonly view: View } | { readonly failure: Failure };

/** A kit on a reader's book, and how it comes out there. */
export interface Fitting {
  readonly view: AnyKitView;
  readonly judgement: Judgement;
  readonly offers: Offers;
}

/** Why a kit does not fit a reader's book, and what would. */
export interface Misfit {
  readonly failure: Failure;
  readonly kit: Kit;
  readonly offers: Offers;
}

/** Ways that would help; undefined where none was sought yet. */
type Offers = readonly Offer[] | undefined;

/** Computes a page for a refit, for which `needWay` was waited, with the modules that the build uses. `quick` leaves light, window and offers out; where that was done before, `open` is what came of it. */
export function fitted(
  data: KitData,
  refit: Refit,
  { quick, open }: { readonly quick: boolean; readonly open?: AnyKitView | undefined },
): Fitting | Misfit {
  const kit = refitKit(data.kit, refit);
  const asked = quick ? { ...kit, light: undefined, insert: undefined } : kit;
  const result = open?.way === "cut" ? closedView(data, kit, open) : viewOf(data, asked, fetchedStep);
  if ("failure" in result)
    return { ...result, kit, offers: quick ? undefined : offersFor(data.kit, refit, makingOf()) };
  const judgement = judgeFit(result.view, leastMargins(data.kit));
  const poor = !quick && judgement.kind === "poor";
  return {
    ...result,
    judgement,
    offers: poor ? betterOffers(data.kit, refit, judgement.reasons, makingOf()) : undefined,
  };
}

/** How kits are tried: by corners, too, once that is fetched. */
function makingOf(): Making | undefined {
  return self.leaflightCorner?.make;
}

/** The kit as it is asked for, or why it does not fit: all that a packet needs. `draw` draws its steps. */
export function viewOf(data: KitData, kit: Kit, draw: DrawStep): Viewed<AnyKitView> {
  return atOnce(viewSteps(data, kit, draw));
}

/** A kit's view where leaves are folded already, and light and window are not made. */
function closedView(data: KitData, kit: Kit, { pattern }: KitView): Viewed<KitView> {
  return viewOfResult(data, kit, closePattern(kit, faceOfFitting(kit), pattern), fetchedStep);
}

/** What `viewOf` does in steps. */
export function* viewSteps(data: KitData, kit: Kit, draw: DrawStep): Steps<Viewed<AnyKitView>> {
  if (!isCutKit(kit)) return self.leaflightCorner!.view(data, kit);
  return viewOfResult(data, kit, yield* fitSteps(kit), draw);
}

function viewOfResult(data: KitData, kit: Kit, result: FitResult, draw: DrawStep): Viewed<KitView> {
  if (!result.fits) return { failure: result.finding };
  const { pattern, findings } = result;
  return { view: viewKitWith(draw, { kit, pattern, findings, pictureNotes: [] }, data.cautions) };
}
