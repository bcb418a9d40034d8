import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import * as say from "../../../words/messages.ts";
import type { LeafCard } from "../../views/leaf-card.ts";
import { escapeXml } from "../../xml.ts";
import { placeLabels } from "../label-places.ts";
import { linePath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { sizeWithin } from "../words-width.ts";
import { across, down, type EdgeLayout } from "./edge-layout.ts";
import { levelTone } from "./level-tone.ts";

/** Numbers of the levels, one for each span, on the body's side. */
export function levelNumbers(card: LeafCard, pattern: Pattern, layout: EdgeLayout): string {
  const { spans } = card.source;
  const { circle } = layout;
  const middles = spans.map((span) => down(layout, (span.from + span.to) / 2));
  const places = placeLabels(middles, 2 * circle + 2, layout.top + circle, layout.foot - circle);
  const x = across(layout, layout.origin + layout.shown) + layout.inward * (circle + 12);
  return spans
    .map((span, i) => {
      const fold = across(layout, pattern.levels[span.level - 1]!.depth);
      const y = places[i]!;
      return (
        tag("path", {
          class: "edge-lead",
          d: linePath([
            [fold + layout.inward * 3, middles[i]!],
            [x - layout.inward * (circle + 9), middles[i]!],
            [x - layout.inward * circle, y],
          ]),
        }) +
        tag("circle", { class: "edge-disc", cx: x, cy: y, r: circle, fill: levelTone(pattern, span.level) }) +
        text(x, y + circle * 0.42, String(span.level), {
          class: "edge-level",
          "text-anchor": "middle",
          "font-size": circle * 1.25,
        })
      );
    })
    .join("");
}

/** Height and cut depth of each mark, beside the fore-edge. */
export function markLabels(card: LeafCard, layout: EdgeLayout): string {
  const { size } = layout;
  const heights = card.source.cuts.map((cut) => down(layout, cut.at));
  const places = placeLabels(heights, size * 1.12, layout.top + size * 0.2, layout.foot - size * 0.2);
  const away = -layout.inward;
  const anchor = away === 1 ? "start" : "end";
  return card.row.marks
    .map((mark, i) => {
      const [y, x] = [places[i]!, layout.edge + away * 30];
      const lead = linePath([
        [layout.edge, heights[i]!],
        [layout.edge + away * 8, heights[i]!],
        [x - away * 5, y],
      ]);
      const words = `<tspan class="edge-at">${escapeXml(mark.at)}</tspan><tspan class="edge-depth" dx="${num(size * 0.3)}">›${escapeXml(mark.cut)}</tspan>`;
      return (
        tag("path", { class: "edge-lead", d: lead }) +
        tag("text", { class: "edge-label", x, y: y + size * 0.35, "font-size": size, "text-anchor": anchor }, words)
      );
    })
    .join("");
}

/** What the figures are, within a drawing of this width. */
export function unitWord(units: UnitSystem, layout: EdgeLayout, width: number): string {
  const away = -layout.inward;
  const anchor = away === 1 ? "start" : "end";
  const x = layout.edge + away * 30;
  const words = say.benchEdgeMarks({ units });
  return text(x, layout.top - 7, words, {
    class: "edge-word",
    "text-anchor": anchor,
    "font-size": sizeWithin(away === 1 ? width - x : x, words, layout.word),
  });
}
