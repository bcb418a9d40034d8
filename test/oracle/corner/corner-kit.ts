import { PLAIN_CORNERS } from "../../../src/core/kit/corner-wish.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { CornerPattern } from "../../../src/core/pattern/corner-pattern.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { type KitChanges, madeKit } from "../../core/kit/made-kit.ts";
import type { Silhouette } from "./silhouettes.ts";

/** A kit that is folded by corners: 120 leaves of 200 × 130 mm, picture 90 mm high. */
export function cornerKit({ book, fit, ...changes }: KitChanges = {}, silhouette?: Silhouette): Kit {
  return madeKit({
    ...(silhouette && {
      picture: {
        width: 100,
        height: 100,
        background: 2,
        shapes: [{ level: 1, rule: silhouette.rule, rings: silhouette.rings }],
      },
    }),
    ...changes,
    book: { leafHeight: 200, leafWidth: 130, blockThickness: 14, leaves: 120, lastPage: 240, ...book },
    fit: {
      shape: { solve: "opening", pictureLeaves: "fill", height: 90 },
      head: 50,
      foldStyle: "corner",
      markStep: 0.5,
      corner: PLAIN_CORNERS,
      ...fit,
    },
  });
}

/** The pattern of a corner kit that fits. @throws Error where it does not */
export function cornerPattern(kit: Kit): CornerPattern {
  const result = fitAny(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  if (!result.pattern.corner) throw new Error("is cut");
  return result.pattern;
}
