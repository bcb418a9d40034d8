import { describeLeaf } from "../book/numbering.ts";
import type { Pattern, PatternLeaf } from "../pattern/pattern.ts";
import { isCheckpoint } from "../plan/batches.ts";
import { benchCutDepth } from "../plan/bench.ts";
import { formatDepth, formatNumber, type LengthStyle } from "../units/length.ts";

/** A mark of a leaf and the cut that is made at it, as text without units. */
export interface MarkText {
  readonly at: string;
  readonly cut: string;
}

/** One leaf of the pattern table as text, in one unit system. */
export interface Row {
  readonly leaf: number;
  /** Empty on border leaves. */
  readonly patternPage: string;
  /** Printed recto, or which unnumbered leaf it is. */
  readonly bookPage: string;
  readonly unnumbered: boolean;
  readonly marks: readonly MarkText[];
  /** Level numbers from head to tail. */
  readonly folds: readonly number[];
  readonly border: boolean;
  readonly checkpoint: boolean;
}

/** The row of one leaf. Cuts are as measured at the bench: from the fore-edge, or from the folded front edge when stepped. */
export function rowOf(leaf: PatternLeaf, pattern: Pattern, style: LengthStyle): Row {
  return {
    leaf: leaf.leaf,
    patternPage: leaf.patternPage === null ? "" : String(leaf.patternPage),
    bookPage: describeLeaf(leaf.name),
    unnumbered: leaf.bookPage === null,
    marks: leaf.cuts.map((cut) => ({
      at: formatNumber(cut.at, style),
      cut: formatDepth(benchCutDepth(pattern, cut.depth), style.units),
    })),
    folds: leaf.spans.map((span) => span.level),
    border: leaf.patternPage === null,
    checkpoint: isCheckpoint(leaf),
  };
}

/** `leaf 13, p. 17` or `leaf 3 (front leaf 3 of 4)`. */
export function leafAndPage(leaf: PatternLeaf): string {
  const name = describeLeaf(leaf.name);
  return leaf.bookPage === null ? `leaf ${leaf.leaf} (${name})` : `leaf ${leaf.leaf}, p. ${name}`;
}
