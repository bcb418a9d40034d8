import { computePattern } from "../../core/pattern/compute.ts";
import { Problem } from "../../core/problem.ts";
import { type Offer, offersFor } from "../../core/refit/offers.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import { type KitView, viewKit } from "../../output/views/kit-view.ts";
import type { KitData } from "../shared/kit-data.ts";

/** A kit on a reader's book, or why it does not fit and what would. */
export type Fitted = { readonly view: KitView } | { readonly problem: Problem; readonly offers: readonly Offer[] };

/** Computes page and packet for a refit with the modules that the build uses. `quick` leaves light, window and offers out. */
export function fitted(data: KitData, refit: Refit, quick = false): Fitted {
  const kit = refitKit(data.kit, refit);
  const asked = quick ? { ...kit, light: undefined, insert: undefined } : kit;
  try {
    const pattern = computePattern(asked);
    return { view: viewKit({ kit: asked, pattern, pictureNotes: data.notes }, data.cautions) };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { problem: error, offers: quick ? [] : offersFor(data.kit, refit) };
  }
}
