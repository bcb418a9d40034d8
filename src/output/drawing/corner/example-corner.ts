import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { CornerLeaf, CornerPattern } from "../../../core/pattern/corner-pattern.ts";

/** A leaf to explain folding by: of those with most creases, the one that keeps most of its fore-edge. */
export function exampleCorner({ leaves }: CornerPattern): CornerLeaf {
  const weight = ({ fold }: CornerLeaf): number =>
    1e6 * creasesOf(fold).length + (fold.kind === "corners" ? 1 + fold.shown.to - fold.shown.from : 0);
  return leaves.reduce((best, leaf) => (weight(leaf) > weight(best) ? leaf : best));
}
