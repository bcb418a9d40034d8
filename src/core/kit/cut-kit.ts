import type { FoldStyle, KnifeStyle } from "../spans/fold-style.ts";
import type { FitWish, Kit, Level } from "./kit.ts";

/** A kit whose leaves are cut. */
export type CutKit = Kit & { readonly fit: FitWish & { readonly foldStyle: KnifeStyle } };

export function isCutKit(kit: Kit): kit is CutKit {
  return kit.fit.foldStyle !== "corner";
}

/** A kit where only kits that are cut come. @throws Error for another, which is a fault of the program */
export function asCutKit(kit: Kit): CutKit {
  if (isCutKit(kit)) return kit;
  throw new Error(`${kit.slug} is folded only, and came where leaves are cut`);
}

/** A kit or a pattern, as far as its front is concerned. */
interface Fronted {
  readonly fit: { readonly foldStyle: FoldStyle };
  readonly levels: readonly Pick<Level, "depth">[];
}

/** Depth of the edges that the picture is drawn with, mm: the front level's fold, or the unfolded fore-edge. */
export function frontDepth({ fit, levels }: Fronted): number {
  return fit.foldStyle === "corner" ? 0 : levels[0]!.depth;
}
