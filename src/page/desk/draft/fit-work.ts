import { type CutKit, isCutKit } from "../../../core/kit/cut-kit.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { type Assessment, assess } from "../../../core/makeability/assessment.ts";
import { makeabilityOf, type TroubleWithWays } from "../../../core/makeability/makeability.ts";
import type { FitResult } from "../../../core/pattern/compute.ts";
import { faceOfFitting } from "../../../core/pattern/face.ts";
import { fitKit } from "../../../core/pattern/fit-kit.ts";
import type { LevelMap } from "../../../core/picture/level-map.ts";
import type { Offer } from "../../../core/refit/offer.ts";
import { offersFor } from "../../../core/refit/offers.ts";

/** What takes longer than a frame, worked out for one kit; plain data, so that it may come from a worker. */

/** How a piece looks on its book, without where its columns lie, which `placePicture` tells at once. */
export type SeenFigures = Omit<Assessment, "place">;

/** What is found, in the order in which it is. */
export type Found =
  /** The kit with its light and window; `figures` of one that can be made. */
  | { readonly stage: "whole"; readonly result: FitResult }
  | { readonly stage: "seen"; readonly figures: SeenFigures }
  /** What would help: against the troubles of a kit that can be made; so that it can be made. */
  | { readonly stage: "ways"; readonly troubles: readonly TroubleWithWays[]; readonly offers: readonly Offer[] };

/** The stages that are asked for together: what is to be seen at once, and what is looked for when it rests. */
export const NEAR = ["whole", "seen"] as const;
export const FAR = ["ways"] as const;
export type Stage = Found["stage"];

/** A page's message to its worker. The picture is sent where it is another one than before. */
export interface FitAsk {
  readonly turn: number;
  readonly stages: readonly Stage[];
  readonly kit: Omit<Kit, "picture">;
  readonly picture: LevelMap | undefined;
}

/** The worker's answers to it; `rests` when all are given. */
export type FitAnswer = { readonly turn: number } & ({ readonly found: Found } | { readonly rests: true });

/** Works out stages for kits, one after the other. */
export class FitWork {
  #known: { readonly kit: Kit; readonly result: FitResult } | undefined;

  /** What a stage finds; undefined where it has nothing to say of the kit. */
  find(kit: Kit, stage: Stage): Found | undefined {
    if (!isCutKit(kit)) return undefined;
    const result = this.#result(kit);
    switch (stage) {
      case "whole":
        return { stage, result };
      case "seen":
        return result.fits ? { stage, figures: figuresOf(kit, result) } : undefined;
      case "ways":
        return result.fits
          ? { stage, troubles: makeabilityOf({ kit, ...result }).troubles, offers: [] }
          : { stage, troubles: [], offers: offersFor(kit, {}) };
    }
  }

  #result(kit: CutKit): FitResult {
    if (this.#known?.kit !== kit) this.#known = { kit, result: fitKit(kit) };
    return this.#known.result;
  }
}

function figuresOf(kit: CutKit, { pattern }: Extract<FitResult, { readonly fits: true }>): SeenFigures {
  const { place, ...figures } = assess(kit, { face: faceOfFitting(kit), pattern });
  return figures;
}
