import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { patternOf } from "../../core/pattern/computed.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import type { Shown } from "./bench-reader.ts";

/** The pattern of a fixture kit with leaves left out. */
export function fixturePattern(slug: string, lostLeaves: readonly number[] = []): Pattern {
  const kit = fixtureKit(slug);
  return patternOf({ ...kit, fit: { ...kit.fit, lostLeaves: lostLeaves.map(leafNumber) } });
}

/** What the bench has to show for a pattern in millimetres, from a leaf on. Cuts of stepped folds are measured from the folded edge. */
export function shownOf(pattern: Pattern, from = 1): Shown[] {
  const decimals = pattern.fit.markStep === 1 ? 0 : 1;
  const less = pattern.fit.foldStyle === "stepped" ? pattern.levels[0]!.depth : 0;
  return pattern.leaves
    .filter((leaf) => leaf.leaf >= from)
    .map((leaf) => ({
      leaf: leaf.leaf,
      page: leaf.bookPage === null ? `leaf ${leaf.leaf}` : String(leaf.bookPage),
      patternPage: leaf.patternPage === null ? "" : String(leaf.patternPage),
      marks: leaf.cuts.map((cut) => `${cut.at.toFixed(decimals)}›${Number((cut.depth - less).toFixed(1))}`),
      folds: leaf.spans.map((span) => span.level),
    }));
}
