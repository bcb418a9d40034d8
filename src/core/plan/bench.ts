import type { Pattern } from "../pattern/pattern.ts";

/**
 * How deep a cut is measured at the bench, mm: from the fore-edge with single folds. With stepped folds the leaf is already
 * folded at the front line, so it is measured from that folded edge: depth − d₁.
 */
export function benchCutDepth(pattern: Pattern, depth: number): number {
  return pattern.fit.foldStyle === "stepped" ? depth - pattern.levels[0]!.depth : depth;
}
