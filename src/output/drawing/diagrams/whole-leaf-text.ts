import type { Kit } from "../../../core/kit/kit.ts";
import type { Notch } from "../../../core/light/light.ts";
import { notchMarks } from "../../../core/light/notch-marks.ts";
import type { Pattern, PatternLeaf, PatternLeafBase } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import { type LengthStyle, stepFor } from "../../../core/units/length.ts";
import { leafName } from "../../../words/leaves.ts";
import { formatDepth, formatNumber } from "../../../words/lengths.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";

/** `Leaf 73, p. 137, pattern page 121`. */
export function leafTitle({ leaf, name, patternPage }: PatternLeafBase): string {
  const title = { leaf, patternPage: patternPage ?? "" };
  return name.kind === "numbered"
    ? say.drawLeafTitle({ ...title, page: name.recto })
    : say.drawLeafTitleUnnumbered({ ...title, name: leafName(name) });
}

/** A whole leaf in words: its spans, its marks with their cuts, its notch. */
export function leafText(kit: Kit, pattern: Pattern, leaf: PatternLeaf, notch: Notch | undefined): string {
  const at = (mm: number): string => formatNumber(mm, markStyle(kit));
  const { units } = kit;
  const spans = leaf.spans.map(({ from, to, level }) => say.drawLeafSpan({ from: at(from), to: at(to), level }));
  const cuts = leaf.cuts.map((cut) =>
    say.drawLeafCut({ at: at(cut.at), depth: formatDepth(benchCutDepth(pattern, cut.depth), units) }),
  );
  const figures = { title: leafTitle(leaf), units, spans: rowText(spans) };
  const text =
    cuts.length > 0
      ? say.drawLeaf({ ...figures, style: pattern.fit.foldStyle, cuts: rowText(cuts) })
      : say.drawLeafPlain(figures);
  return notch ? `${text} ${say.drawLeafWithNotch(notchFigures(notch, kit))}` : text;
}

/** Where a notch goes, in two lines. */
export function notchLines(notch: Notch, kit: Kit): string[] {
  const { from, to, depth } = notchFigures(notch, kit);
  return [say.drawLeafNotch({ from, to }), say.drawLeafNotchDepth({ depth })];
}

/** How a kit's marks are written. */
export function markStyle({ units, fit }: Kit): LengthStyle {
  return { units, step: stepFor(units, fit.markStep) };
}

function notchFigures(notch: Notch, kit: Kit): { from: string; to: string; depth: string } {
  const style = markStyle(kit);
  const { from, to, depth } = notchMarks(notch, style.step);
  return { from: formatNumber(from, style), to: formatNumber(to, style), depth: formatNumber(depth, style) };
}
