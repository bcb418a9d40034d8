import { type Crease, isTurned } from "../../../core/corner/crease.ts";
import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { CornerLeaf, CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import type { LengthStyle } from "../../../core/units/length.ts";
import { formatDepth } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { FOLD, STRIP, type StripFace, type StripField, type StripPart } from "../sheets/strip.ts";
import { layStrips, type StripSheet } from "../sheets/strip-sheets.ts";

/** Ground of what is folded over. */
const FOLDED = "#e4dccb";

/** Height of the slant that shows which way a corner is folded, mm. */
const SLANT = 5;

/** A strip for each leaf with marks: what stays is white, the corners are toned, with a slant at each mark, and the end of a steeper crease. */
export function cornerStrips(kit: Kit, pattern: CornerPattern, batches: readonly Batch<CornerLeaf>[]): StripSheet[] {
  return layStrips(kit, pattern, batches, {
    hasMarks: ({ fold }) => creasesOf(fold).length > 0,
    marksOf: ({ fold }) => creasesOf(fold).map(({ from }) => from.at),
    show: (leaf, part, style) => cornerStrip(leaf, part, { style, isLeft: kit.book.direction === "rtl" }),
    key: say.drawCornerStripKey(),
  });
}

interface StripSetting {
  readonly style: LengthStyle;
  /** Whether the page before the hands has its fore-edge to the left. */
  readonly isLeft: boolean;
}

function cornerStrip(leaf: CornerLeaf, part: StripPart, { style, isLeft }: StripSetting): StripFace {
  const top = FOLD - part.from;
  const creases = creasesOf(leaf.fold);
  const marked = creases.filter(({ from }) => from.at >= part.from && from.at <= part.to);
  return {
    fields: creases.flatMap((crease) => toned(crease, top, part)),
    numbers: [],
    marks: marked.map((crease) => ({
      words: isTurned(crease) ? say.cornerCreaseEnd({ end: formatDepth(crease.to.depth, style.units) }) : "",
      y: top + crease.from.at,
      foot: top + crease.from.at + (crease.corner === "head" ? -SLANT - 0.8 : SLANT + 2.8),
    })),
    slants: marked.map(({ corner, from }) => ({
      x: isLeft ? 0 : STRIP,
      y: top + from.at,
      across: isLeft ? SLANT : -SLANT,
      down: corner === "head" ? -SLANT : SLANT,
    })),
    notch: undefined,
  };
}

/** The stretch of the fore-edge that a crease folds over. */
function toned({ corner, from }: Crease, top: number, part: StripPart): StripField[] {
  const [begin, end] =
    corner === "head" ? [part.from, Math.min(from.at, part.to)] : [Math.max(from.at, part.from), part.to];
  return end > begin ? [{ tone: FOLDED, from: top + begin, to: top + end }] : [];
}
