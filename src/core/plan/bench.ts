import type { Pattern } from "../pattern/pattern.ts";

/**
 * How deep a cut is measured at the bench, mm: from the fore-edge with single folds. With stepped folds the leaf is already
 * folded at the front line, so it is measured from that folded edge: depth − d₁.
 */
export function benchCutDepth(pattern: Pattern, depth: number): number {
  return pattern.fit.foldStyle === "stepped" ? depth - pattern.levels[0]!.depth : depth;
}

/** The edge that cuts are measured from at the bench. */
export function cutEdge(pattern: Pattern): "folded edge" | "fore-edge" {
  return pattern.fit.foldStyle === "stepped" ? "folded edge" : "fore-edge";
}
