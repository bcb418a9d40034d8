import { type Crease, isTurned } from "../../../core/corner/crease.ts";
import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { CornerLeaf, CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import type { LengthStyle } from "../../../core/units/length.ts";
import { formatDepth } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { boxPath, linePath } from "../path.ts";
import { names, outline, STRIP, type StripPart, stripMarks, TAB, TITLE } from "../sheets/strip.ts";
import { layStrips, type StripSheet } from "../sheets/strip-sheets.ts";
import { tag } from "../svg-text.ts";

/** Ground of what is folded over. */
const FOLDED = "#e4dccb";

/** Height of the slant that shows which way a corner is folded, mm. */
const SLANT = 5;

/** A strip for each leaf with marks: what stays is white, the corners are toned, with a slant at each mark, and the end of a steeper crease. */
export function cornerStrips(kit: Kit, pattern: CornerPattern, batches: readonly Batch<CornerLeaf>[]): StripSheet[] {
  return layStrips(kit, pattern, batches, {
    hasMarks: ({ fold }) => creasesOf(fold).length > 0,
    marksOf: ({ fold }) => creasesOf(fold).map(({ from }) => from.at),
    draw: (leaf, x, part, style) => cornerStrip(leaf, x, part, { style, isLeft: kit.book.direction === "rtl" }),
    key: say.drawCornerStripKey(),
  });
}

interface StripSetting {
  readonly style: LengthStyle;
  /** Whether the page before the hands has its fore-edge to the left. */
  readonly isLeft: boolean;
}

function cornerStrip(leaf: CornerLeaf, x: number, part: StripPart, setting: StripSetting): string {
  const top = TITLE + TAB - part.from;
  const creases = creasesOf(leaf.fold);
  return [
    ...creases.map((crease) => toned(crease, x, top, part)),
    outline(x, part),
    names(leaf, x + STRIP / 2),
    marksOf(
      creases.filter(({ from }) => from.at >= part.from && from.at <= part.to),
      x,
      top,
      setting,
    ),
  ].join("");
}

/** The stretch of the fore-edge that a crease folds over. */
function toned({ corner, from }: Crease, x: number, top: number, part: StripPart): string {
  const [begin, end] =
    corner === "head" ? [part.from, Math.min(from.at, part.to)] : [Math.max(from.at, part.from), part.to];
  if (end <= begin) return "";
  return tag("path", { d: boxPath(x, top + begin, STRIP, end - begin), fill: FOLDED });
}

/** The marks, the slant of each one's corner, and on that side where a steeper crease ends. */
function marksOf(creases: readonly Crease[], x: number, top: number, { style, isLeft }: StripSetting): string {
  const edge = isLeft ? x : x + STRIP;
  const slants = creases.map(({ corner, from }) => {
    const y = top + from.at;
    const far = [edge + (isLeft ? SLANT : -SLANT), y + (corner === "head" ? -SLANT : SLANT)] as const;
    const d = linePath([[edge, y], far]);
    return tag("path", { d, stroke: "#000", "stroke-width": 0.25, "stroke-dasharray": "1.2 0.6", fill: "none" });
  });
  const told = creases.map((crease) => {
    const { corner, from, to } = crease;
    const y = top + from.at;
    return {
      words: isTurned(crease) ? say.cornerCreaseEnd({ end: formatDepth(to.depth, style.units) }) : "",
      y,
      foot: y + (corner === "head" ? -SLANT - 0.8 : SLANT + 2.8),
    };
  });
  return slants.join("") + stripMarks(x, told);
}
