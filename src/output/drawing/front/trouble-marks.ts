import type { Box } from "../../../core/geometry/box.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { Trouble } from "../../../core/makeability/trouble.ts";
import { boxPath, linePath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";

/** Marks of what is hard to make or to see, each kind with a pattern of its own; all sizes in shares of a pen's width. */
export const INK = "#5b1a10";

/** Patterns that `areaMark` fills with, for a pen of a width. Each kind's id is its own on a page. */
export function markPatterns(pen: number): string {
  return (
    pattern("hidden", pen, [lineAcross(pen, 1)]) +
    pattern("out-of-reach", pen, [lineAcross(pen, 1), lineAcross(pen, -1)])
  );
}

/** Areas of a level: hidden ones hatched, those out of reach cross-hatched. */
export function areaMark(kind: "hidden" | "out-of-reach", boxes: readonly Box[]): string {
  const d = boxes.map(({ left, top, right, bottom }) => boxPath(left, top, right - left, bottom - top)).join("");
  return tag("path", { d, fill: `url(#mark-${kind})` });
}

/** A place of merged strips: a box round it; a narrow part: a dashed one. */
export function placeMark(kind: "slivers" | "narrow", { left, top, right, bottom }: Box, pen: number): string {
  return tag("rect", {
    x: left - 2 * pen,
    y: top - 2 * pen,
    width: right - left + 4 * pen,
    height: bottom - top + 4 * pen,
    rx: 2 * pen,
    fill: "none",
    stroke: INK,
    "stroke-width": pen,
    ...(kind === "narrow" ? { "stroke-dasharray": `${num(2.5 * pen)} ${num(1.5 * pen)}` } : {}),
  });
}

/** Leaves with many cuts: a bracket over their columns, open below. */
export function leavesMark(left: number, right: number, y: number, pen: number): string {
  const [from, to] = [left + pen / 2, Math.max(right - pen / 2, left + pen / 2 + 0.01)];
  const line = linePath([
    [from, y + 5 * pen],
    [from, y],
    [to, y],
    [to, y + 5 * pen],
  ]);
  return tag("path", { d: line, fill: "none", stroke: INK, "stroke-width": pen });
}

/** The number of a trouble in a ring. */
export function numberMark(x: number, y: number, radius: number, number: number): string {
  const size = 1.35 * radius;
  return (
    tag("circle", { cx: x, cy: y, r: radius, fill: "#fff", stroke: INK, "stroke-width": radius * 0.12 }) +
    text(x, y + 0.35 * size, String(number), {
      "font-size": size,
      "font-weight": 700,
      "text-anchor": "middle",
      fill: "#000",
    })
  );
}

const SWATCH = { width: 16, height: 10, pen: 0.7 } as const;

/** How a kind of trouble is marked, for a list; nothing for what is not on the picture. */
export function markSwatch(kind: Trouble["kind"]): string {
  const drawn = swatchOf(kind);
  if (drawn === "") return "";
  const { width, height } = SWATCH;
  const paper = tag("rect", { x: 0, y: 0, width, height, fill: "#efe2c6" });
  return `<svg class="swatch" viewBox="0 0 ${width} ${height}" aria-hidden="true">${paper}${drawn}</svg>`;
}

function swatchOf(kind: Trouble["kind"]): string {
  const { width, height, pen } = SWATCH;
  const middle = { left: 5, top: 3, right: width - 5, bottom: height - 3 };
  const slanted = (mirrored: boolean): string => {
    const lines = [4, 8, 12, 16, 20, 24].map((sum) => {
      const [from, to] = [Math.max(0, sum - height), Math.min(width, sum)];
      const at = (x: number): Point => [mirrored ? width - x : x, sum - x];
      return linePath([at(from), at(to)]);
    });
    return tag("path", { d: lines.join(""), stroke: INK, "stroke-width": pen, fill: "none" });
  };
  switch (kind) {
    case "hidden":
      return slanted(false);
    case "out-of-reach":
      return slanted(false) + slanted(true);
    case "slivers":
    case "narrow":
      return placeMark(kind, middle, pen);
    case "many-cuts":
      return leavesMark(3, width - 3, 3, pen);
    case "springs-open":
      return "";
  }
}

/** Distance of two lines of a hatch, in widths of the pen. */
const APART = 4;

function pattern(kind: "hidden" | "out-of-reach", pen: number, lines: readonly string[]): string {
  const side = num(APART * pen * Math.SQRT2);
  const drawn = tag("path", { d: lines.join(""), stroke: INK, "stroke-width": pen, fill: "none" });
  return `<pattern id="mark-${kind}" patternUnits="userSpaceOnUse" width="${side}" height="${side}">${drawn}</pattern>`;
}

/** A slanted line from corner to corner of a tile, and what the lines of the neighbours cover of the other two corners. */
function lineAcross(pen: number, way: 1 | -1): string {
  const side = APART * pen * Math.SQRT2;
  const line = (x: number): string => {
    const [start, end] = way === 1 ? [side, 0] : [0, side];
    return `M${num(x)} ${num(start)}L${num(x + side)} ${num(end)}`;
  };
  return [-side, 0, side].map(line).join("");
}
