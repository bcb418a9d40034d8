import { leafNumber } from "../../core/book/leaf-number.ts";
import { leafRoot, leafTip } from "../../core/fan/fan.ts";
import type { Pocket } from "../../core/light/light.ts";
import { fanOf } from "../../core/pattern/fan-of.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Span } from "../../core/spans/span.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { type Figure, figureOf } from "./figure.ts";
import { lineLook } from "./line-kinds.ts";
import { levelPath, linePath, uprightPath } from "./path.ts";
import { num, tag, text } from "./svg-text.ts";

/** Leaves are drawn one in so many, so that they stay apart. */
const EVERY = 3;

const GLOW = { fill: "#ffe9b0", stroke: "#000", "stroke-width": 0.35 };

/** The pocket from above: leaves as it stands at the middle of the light, notched ones cut back, and the light in its clearance. */
export function pocketPlan(pattern: Pattern, pocket: Pocket, units: UnitSystem): Figure {
  const { centre, light, floor, notches } = pocket;
  const fan = fanOf(pattern);
  const height = floor - light.height / 2;
  const radius = light.diameter / 2;
  const size = (mm: number): string => formatSize(mm, units);
  const tips = pattern.leaves.map((leaf) => leafTip(fan, leaf.leaf - 1, depthAt(leaf.spans, height, pattern)));
  const left = Math.min(...tips.map((tip) => tip.x)) - 6;
  const right = Math.max(...tips.map((tip) => tip.x)) + 6;
  const front = Math.max(...tips.map((tip) => tip.z), centre.z + radius) + 12;
  const label = say.drawPocketPlan({
    height: size(height),
    notches: notches.length,
    diameter: size(light.diameter),
    setback: size(light.setback),
    clearance: size(light.clearance),
  });
  const words = { "text-anchor": "middle", fill: "#000" };
  const drawing = [
    tag("path", { d: leafLines(pattern, pocket, height), fill: "none", stroke: "#6b5b3e", "stroke-width": 0.2 }),
    tag("circle", { cx: centre.x, cy: centre.z, r: radius + light.clearance, ...lineLook("position") }),
    tag("circle", { cx: centre.x, cy: centre.z, r: radius, ...GLOW }),
    text(centre.x, centre.z + 1.6, say.drawPocketDiameter({ diameter: size(light.diameter) }), {
      "font-size": 5,
      ...words,
    }),
    tag("path", {
      d: levelPath([left + 4, front - 5], right - left - 8),
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.2,
    }),
    text((left + right) / 2, front - 0.6, say.drawLookFromHere(), { "font-size": 4.4, ...words }),
  ].join("");
  return figureOf({ left, top: -8, width: right - left, height: front + 9 }, label, drawing);
}

/** Every third leaf from the spine to its tip at a height, or to its notch. */
function leafLines(pattern: Pattern, pocket: Pocket, height: number): string {
  const fan = fanOf(pattern);
  const notches = new Map(pocket.notches.map((notch) => [notch.leaf, notch.depth]));
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf, leaf.spans]));
  return Array.from({ length: Math.ceil(fan.leaves / EVERY) }, (_, i) => {
    const j = i * EVERY;
    const leaf = leafNumber(j + 1);
    const depth = Math.max(depthAt(folded.get(leaf) ?? [], height, pattern), notches.get(leaf) ?? 0);
    const [root, tip] = [leafRoot(fan, j), leafTip(fan, j, depth)];
    return linePath([
      [root.x, root.z],
      [tip.x, tip.z],
    ]);
  }).join("");
}

function depthAt(spans: readonly Span[], height: number, pattern: Pattern): number {
  const span = spans.find((one) => height >= one.from && height < one.to);
  return span ? pattern.levels[span.level - 1]!.depth : 0;
}

/** The pocket from the front: the leaf's height with the picture's box, and the light on its floor. */
export function pocketElevation(pattern: Pattern, pocket: Pocket, units: UnitSystem): Figure {
  const { fit, book } = pattern;
  const { light, centre, floor } = pocket;
  const size = (mm: number): string => formatSize(mm, units);
  const half = fit.width / 2 + 8;
  const side = fit.width / 2 + 3;
  const left = centre.x - light.diameter / 2;
  const top = floor - light.height;
  const [floorText, heightText] = [size(floor), size(light.height)];
  const label = say.drawPocketElevation({ floor: floorText, height: heightText, clearance: size(light.clearance) });
  const words = { "text-anchor": "middle", fill: "#000" };
  const paper = { fill: "#fdf7e8", stroke: "#000", "stroke-width": 0.35 };
  const drawing = [
    tag("rect", { x: -half + 4, y: 0, width: 2 * (half - 4), height: book.leafHeight, ...paper }),
    tag("rect", { x: -fit.width / 2, y: fit.head, width: fit.width, height: fit.height, ...lineLook("position") }),
    tag("rect", { x: left, y: top, width: light.diameter, height: light.height, ...GLOW }),
    tag("path", { d: levelPath([-side, floor], 2 * side), ...lineLook("score") }),
    dimensionDown(half + 6, 0, floor, floorText),
    dimensionDown(left - 4, top, floor, heightText),
    text(centre.x, (top + floor) / 2 + 1.6, say.drawLight(), { "font-size": 8, ...words }),
    text(0, -2, say.drawHeadEdge(), { "font-size": 7, ...words }),
  ].join("");
  const field = { left: -half - 4, top: -10, width: 2 * half + 12, height: book.leafHeight + 14 };
  return figureOf(field, label, drawing);
}

/** An upright dimension: line, ticks at both ends, figure beside it readable from the right. */
function dimensionDown(x: number, from: number, to: number, words: string): string {
  const tick = (y: number): string => levelPath([x - 1.5, y], 3);
  return (
    tag("path", {
      d: uprightPath([x, from], to - from) + tick(from) + tick(to),
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.25,
    }) +
    text(0, 0, words, {
      "font-size": 8,
      "text-anchor": "middle",
      fill: "#000",
      transform: `translate(${num(x - 2.4)} ${num((from + to) / 2)}) rotate(-90)`,
    })
  );
}
