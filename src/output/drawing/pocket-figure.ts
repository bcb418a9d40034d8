import { leafRoot, leafTip } from "../../core/fan/fan.ts";
import type { Pocket } from "../../core/light/light.ts";
import { fanOf } from "../../core/pattern/fan-of.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Span } from "../../core/spans/span.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { formatSize } from "../../words/lengths.ts";
import { escapeXml } from "../xml.ts";
import { lineLook } from "./line-kinds.ts";
import { num, tag, text } from "./svg-text.ts";

/** A figure for page and packet: its own SVG and what it shows in words. */
export interface Figure {
  readonly svg: string;
  readonly label: string;
}

/** Leaves are drawn one in so many, so that they stay apart. */
const EVERY = 3;

/** The pocket from above: leaves as it stands at the middle of the light, notched ones cut back, and the light in its clearance. */
export function pocketPlan(pattern: Pattern, pocket: Pocket, units: UnitSystem): Figure {
  const fan = fanOf(pattern);
  const height = pocket.floor - pocket.light.height / 2;
  const notches = new Map(pocket.notches.map((notch) => [notch.leaf, notch.depth]));
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf, leaf.spans]));
  const lines = Array.from({ length: Math.ceil(fan.leaves / EVERY) }, (_, i) => {
    const j = i * EVERY;
    const depth = Math.max(depthAt(folded.get(j + 1) ?? [], height, pattern), notches.get(j + 1) ?? 0);
    const root = leafRoot(fan, j);
    const tip = leafTip(fan, j, depth);
    return `M${num(root.x)} ${num(root.z)}L${num(tip.x)} ${num(tip.z)}`;
  });
  const { centre, light } = pocket;
  const radius = light.diameter / 2;
  const tips = pattern.leaves.map((leaf) => leafTip(fan, leaf.leaf - 1, depthAt(leaf.spans, height, pattern)));
  const left = Math.min(...tips.map((tip) => tip.x)) - 6;
  const right = Math.max(...tips.map((tip) => tip.x)) + 6;
  const front = Math.max(...tips.map((tip) => tip.z), centre.z + radius) + 12;
  const dimension = `Ø ${formatSize(light.diameter, units)}`;
  const label = `The pocket from above, ${formatSize(height, units)} from the head: ${pocket.notches.length} leaves are cut back so that the light of ${formatSize(light.diameter, units)} stands ${formatSize(light.setback, units)} behind the front with ${formatSize(light.clearance, units)} free all round. Every third leaf is drawn.`;
  const drawing = [
    tag("path", { d: lines.join(""), fill: "none", stroke: "#6b5b3e", "stroke-width": 0.2 }),
    tag("circle", { cx: centre.x, cy: centre.z, r: radius + light.clearance, ...lineLook("position") }),
    tag("circle", { cx: centre.x, cy: centre.z, r: radius, fill: "#ffe9b0", stroke: "#000", "stroke-width": 0.35 }),
    text(centre.x, centre.z + 1.6, dimension, { "font-size": 5, "text-anchor": "middle", fill: "#000" }),
    tag("path", {
      d: `M${num(left + 4)} ${num(front - 5)}h${num(right - left - 8)}`,
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.2,
    }),
    text((left + right) / 2, front - 0.6, "you look from here", {
      "font-size": 4.4,
      "text-anchor": "middle",
      fill: "#000",
    }),
  ].join("");
  return { label, svg: figureSvg(left, -8, right - left, front + 9, label, drawing) };
}

/** The pocket from the front: the leaf's height with the picture's box, and the light on its floor. */
export function pocketElevation(pattern: Pattern, pocket: Pocket, units: UnitSystem): Figure {
  const { fit, book } = pattern;
  const { light, centre, floor } = pocket;
  const half = fit.width / 2 + 8;
  const left = centre.x - light.diameter / 2;
  const top = floor - light.height;
  const side = fit.width / 2 + 3;
  const label = `The pocket from the front: its floor is ${formatSize(floor, units)} from the head edge, the light ${formatSize(light.height, units)} high; notches begin ${formatSize(light.clearance, units)} above it.`;
  const drawing = [
    tag("rect", {
      x: -half + 4,
      y: 0,
      width: 2 * (half - 4),
      height: book.leafHeight,
      fill: "#fdf7e8",
      stroke: "#000",
      "stroke-width": 0.35,
    }),
    tag("rect", { x: -fit.width / 2, y: fit.head, width: fit.width, height: fit.height, ...lineLook("position") }),
    tag("rect", {
      x: left,
      y: top,
      width: light.diameter,
      height: light.height,
      fill: "#ffe9b0",
      stroke: "#000",
      "stroke-width": 0.35,
    }),
    tag("path", { d: `M${num(-side)} ${num(floor)}H${num(side)}`, ...lineLook("score") }),
    dimensionDown(side + 2, 0, floor, formatSize(floor, units)),
    dimensionDown(left - 4, top, floor, formatSize(light.height, units)),
    text(centre.x, (top + floor) / 2 + 1.6, "light", { "font-size": 8, "text-anchor": "middle", fill: "#000" }),
    text(0, -2, "head edge", { "font-size": 7, "text-anchor": "middle", fill: "#000" }),
  ].join("");
  return { label, svg: figureSvg(-half - 4, -10, 2 * half + 12, book.leafHeight + 14, label, drawing) };
}

/** An upright dimension: line, ticks at both ends, figure beside it readable from the right. */
function dimensionDown(x: number, from: number, to: number, words: string): string {
  const tick = (y: number): string => `M${num(x - 1.5)} ${num(y)}h3`;
  return (
    tag("path", {
      d: `M${num(x)} ${num(from)}V${num(to)}${tick(from)}${tick(to)}`,
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

export function figureSvg(x: number, y: number, width: number, height: number, label: string, drawing: string): string {
  return `<svg class="figure" viewBox="${num(x)} ${num(y)} ${num(width)} ${num(height)}" role="img" aria-label="${escapeXml(label)}">${drawing}</svg>`;
}

function depthAt(spans: readonly Span[], height: number, pattern: Pattern): number {
  const span = spans.find((one) => height >= one.from && height < one.to);
  return span ? pattern.levels[span.level - 1]!.depth : 0;
}
