import type { Kit } from "../kit/kit.ts";
import { leastMargins } from "../refit/margins.ts";
import { judgeFit, type Quality } from "../refit/quality.ts";
import { isGraveTrouble, type Trouble } from "./trouble.ts";

/** How a kit comes out on its own book: by its fit, and by what of the picture is hard to make or to see. */
export function outcomeOf(kit: Kit, fit: Parameters<typeof judgeFit>[0], troubles: readonly Trouble[]): Quality {
  const { kind } = judgeFit(fit, leastMargins(kit));
  return kind === "fits" && troubles.some(isGraveTrouble) ? "check" : kind;
}
