import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Notch } from "../../core/light/light.ts";
import { notchMarks } from "../../core/light/notch-marks.ts";
import type { Pattern, PatternLeaf } from "../../core/pattern/pattern.ts";
import { isCheckpoint } from "../../core/plan/batches.ts";
import { benchCutDepth } from "../../core/plan/bench.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import { leafName } from "../../words/leaves.ts";
import { formatDepth, formatNumber } from "../../words/lengths.ts";

/** A mark of a leaf and the cut that is made at it, as text without units. */
export interface MarkText {
  readonly at: string;
  readonly cut: string;
}

/** A notch as text without units: heights from the head, depth from the unfolded fore-edge. */
export interface NotchText {
  readonly from: string;
  readonly to: string;
  readonly depth: string;
}

/** One leaf of the pattern table as text, in one unit system. */
export interface Row {
  readonly leaf: LeafNumber;
  /** Empty on border leaves. */
  readonly patternPage: string;
  /** Printed recto, or which unnumbered leaf it is. */
  readonly bookPage: string;
  readonly unnumbered: boolean;
  readonly marks: readonly MarkText[];
  /** Level numbers from head to tail. */
  readonly folds: readonly number[];
  /** The notch for the light, marked with the leaf and cut after folding. */
  readonly notch: NotchText | undefined;
  readonly border: boolean;
  readonly checkpoint: boolean;
}

/** The row of one leaf. Cuts are as measured at the bench: from the fore-edge, or from the folded front edge when stepped. */
export function rowOf(leaf: PatternLeaf, pattern: Pattern, style: LengthStyle): Row {
  return {
    leaf: leaf.leaf,
    patternPage: leaf.patternPage === null ? "" : String(leaf.patternPage),
    bookPage: leafName(leaf.name),
    unnumbered: leaf.bookPage === null,
    marks: leaf.cuts.map((cut) => ({
      at: formatNumber(cut.at, style),
      cut: formatDepth(benchCutDepth(pattern, cut.depth), style.units),
    })),
    folds: leaf.spans.map((span) => span.level),
    notch: notchText(
      pattern.pocket?.notches.find((notch) => notch.leaf === leaf.leaf),
      style,
    ),
    border: leaf.patternPage === null,
    checkpoint: isCheckpoint(leaf),
  };
}

export function notchText(notch: Notch | undefined, style: LengthStyle): NotchText | undefined {
  if (!notch) return undefined;
  const { from, to, depth } = notchMarks(notch, style.step);
  return { from: formatNumber(from, style), to: formatNumber(to, style), depth: formatNumber(depth, style) };
}
