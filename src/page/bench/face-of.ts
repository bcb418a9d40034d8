import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import type { BenchFace } from "./bench-face.ts";
import { CUT_FACE } from "./cut-face.ts";

/** What the bench shows of a pattern, whose way `needWay` has fetched. */
export function faceOf({ pattern }: { readonly pattern: AnyPattern }): BenchFace {
  return pattern.corner ? self.leaflightCornerBench!.face : CUT_FACE;
}
