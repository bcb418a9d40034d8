import type { Failure } from "../../core/findings/failure.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { fitKit } from "../../core/pattern/fit-kit.ts";
import type { Offer } from "../../core/refit/offer.ts";
import { offersFor } from "../../core/refit/offers.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import { type KitView, viewKit } from "../../output/views/kit-view.ts";
import type { KitData } from "../shared/kit-data.ts";

/** A kit on a reader's book, or why it does not fit and what would. */
export type Fitted =
  | { readonly view: KitView }
  | { readonly failure: Failure; readonly kit: Kit; readonly offers: readonly Offer[] };

/** Computes a page for a refit with the modules that the build uses. `quick` leaves light, window and offers out. */
export function fitted(data: KitData, refit: Refit, quick = false): Fitted {
  const kit = refitKit(data.kit, refit);
  const result = viewOf(data, quick ? { ...kit, light: undefined, insert: undefined } : kit);
  return "view" in result ? result : { ...result, kit, offers: quick ? [] : offersFor(data.kit, refit) };
}

/** The kit as it is asked for, or why it does not fit: all that a packet needs. */
export function viewOf(data: KitData, kit: Kit): { readonly view: KitView } | { readonly failure: Failure } {
  const result = fitKit(kit);
  if (!result.fits) return { failure: result.finding };
  const { pattern, findings } = result;
  return { view: viewKit({ kit, pattern, findings, pictureNotes: [] }, data.cautions) };
}
