import { type Crease, isTurned } from "../../../core/corner/crease.ts";
import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { CornerLeaf, CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import type { LengthStyle } from "../../../core/units/length.ts";
import { formatDepth } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Gathered } from "../gathered.ts";
import { boxPath, linePath } from "../path.ts";
import { markLine, names, outline, STRIP, type StripPart, TAB, TITLE } from "../sheets/strip.ts";
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
    draw: (on, leaf, x, part, style) => cornerStrip(on, leaf, x, part, { style, isLeft: kit.book.direction === "rtl" }),
    key: say.drawCornerStripKey(),
  });
}

interface StripSetting {
  readonly style: LengthStyle;
  /** Whether the page before the hands has its fore-edge to the left. */
  readonly isLeft: boolean;
}

function cornerStrip(on: Gathered, leaf: CornerLeaf, x: number, part: StripPart, setting: StripSetting): void {
  const top = TITLE + TAB - part.from;
  const creases = creasesOf(leaf.fold);
  for (const crease of creases) toned(on, crease, x, top, part);
  outline(on, x, part);
  names(on, leaf, x + STRIP / 2);
  for (const crease of creases)
    if (crease.from.at >= part.from && crease.from.at <= part.to) markOf(on, crease, x, top, setting);
}

/** The stretch of the fore-edge that a crease folds over. */
function toned(on: Gathered, { corner, from }: Crease, x: number, top: number, part: StripPart): void {
  const [begin, end] =
    corner === "head" ? [part.from, Math.min(from.at, part.to)] : [Math.max(from.at, part.from), part.to];
  if (end > begin) on.path("fields", boxPath(x, top + begin, STRIP, end - begin), { fill: FOLDED });
}

/** The mark, the slant of its corner, and on that side where a steeper crease ends. */
function markOf(on: Gathered, crease: Crease, x: number, top: number, { style, isLeft }: StripSetting): void {
  const { corner, from, to } = crease;
  const away = corner === "head" ? -1 : 1;
  const y = top + from.at;
  const edge = isLeft ? x : x + STRIP;
  const slant = linePath([
    [edge, y],
    [edge + (isLeft ? SLANT : -SLANT), y + away * SLANT],
  ]);
  const end = isTurned(crease) ? say.cornerCreaseEnd({ end: formatDepth(to.depth, style.units) }) : "";
  on.path("lines", slant, { stroke: "#000", "stroke-width": 0.25, "stroke-dasharray": "1.2 0.6", fill: "none" });
  markLine(on, end, x, y, y + (away < 0 ? -SLANT - 0.8 : SLANT + 2.8));
}
