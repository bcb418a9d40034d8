import type { Point } from "../../../core/geometry/point.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import * as say from "../../../words/messages.ts";
import type { LeafCard } from "../../views/leaf-card.ts";
import { escapeXml } from "../../xml.ts";
import { ringPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";
import { levelNumbers, markLabels, unitWord } from "./edge-labels.ts";
import { across, type DrawingSpace, down, type EdgeLayout, layEdge } from "./edge-layout.ts";
import { levelTone } from "./level-tone.ts";

/**
 * The edge of one leaf seen on its front as it lies when it is cut, to scale in both directions: marks with their heights
 * and cut depths, cuts as lines, each span's fold line and its flap in the tint of its level, the level's number behind it,
 * the light's notch. With stepped folds the edge is the one folded at the front level's line, otherwise the fore-edge.
 */
export function leafEdge(card: LeafCard, pattern: Pattern, units: UnitSystem, space: DrawingSpace): string {
  const layout = layEdge(card, pattern, space);
  const parts = [
    body(layout),
    ...card.source.spans.map((span) => flap(span, pattern, layout)),
    notch(card, pattern, layout),
    ...card.source.cuts.map((cut) => cutLine(cut, layout)),
    levelNumbers(card, pattern, layout),
    markLabels(card, layout),
    card.row.marks.length > 0 ? unitWord(units, layout, space.width) : "",
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" class="edge-drawing" width="${num(space.width)}" height="${num(space.height)}" viewBox="0 0 ${num(space.width)} ${num(space.height)}" role="img" aria-label="${escapeXml(say.benchEdge({ leaf: card.spoken }))}">${parts.join("")}</svg>`;
}

function body(layout: EdgeLayout): string {
  const gutter = across(layout, layout.origin + layout.shown);
  const wave = 5;
  const steps = Math.max(4, Math.round((layout.foot - layout.top) / 22));
  const torn = Array.from({ length: steps + 1 }, (_, i): Point => {
    const y = layout.foot - ((layout.foot - layout.top) * i) / steps;
    return [gutter + (i % 2 === 0 ? 0 : wave), y];
  });
  const name = { class: "edge-word", "text-anchor": "middle", "font-size": layout.word };
  const middle = (layout.edge + gutter) / 2;
  return (
    tag("path", {
      class: "edge-body",
      d: ringPath([[layout.edge, layout.top], [layout.edge, layout.foot], ...torn]),
    }) +
    (layout.origin > 0 ? edgeLine(layout) : "") +
    text(middle, layout.top - 7, say.benchEdgeHead(), name) +
    text(middle, layout.foot + layout.word, say.benchEdgeTail(), name)
  );
}

/** The edge of a leaf that is folded whole first. */
function edgeLine({ edge, top, foot }: EdgeLayout): string {
  return tag("line", { class: "edge-folded", x1: edge, y1: top, x2: edge, y2: foot });
}

function flap(span: { from: number; to: number; level: number }, pattern: Pattern, layout: EdgeLayout): string {
  const depth = pattern.levels[span.level - 1]!.depth;
  const fold = across(layout, depth);
  const [top, foot] = [down(layout, span.from), down(layout, span.to)];
  const x = Math.min(layout.edge, fold);
  return (
    tag("rect", {
      class: "edge-flap",
      x,
      y: top,
      width: Math.abs(layout.edge - fold),
      height: foot - top,
      fill: levelTone(pattern, span.level),
    }) + tag("line", { class: "edge-fold", x1: fold, y1: top, x2: fold, y2: foot })
  );
}

function notch(card: LeafCard, pattern: Pattern, layout: EdgeLayout): string {
  const found = pattern.pocket?.notches.find((one) => one.leaf === card.row.leaf);
  if (!found) return "";
  const inner = across(layout, Math.min(found.depth, layout.origin + layout.shown));
  const [top, foot] = [down(layout, found.from), down(layout, found.to)];
  return tag("rect", {
    class: "edge-notch",
    x: Math.min(layout.edge, inner),
    y: top,
    width: Math.abs(layout.edge - inner),
    height: foot - top,
  });
}

function cutLine(cut: { at: number; depth: number }, layout: EdgeLayout): string {
  const y = down(layout, cut.at);
  return tag("line", { class: "edge-cut", x1: layout.edge, y1: y, x2: across(layout, cut.depth), y2: y });
}
