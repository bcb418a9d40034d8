import type { Point } from "../geometry/point.ts";
import type { Part } from "../insert/part.ts";
import { lineLook } from "./line-kinds.ts";
import { num, tag, text } from "./svg-text.ts";

/** A part's lines at a place: cut lines full, scores dashed, positions dash-dot with their labels. `thin` for small figures. */
export function partDrawing(
  part: Part,
  place: (point: Point) => Point,
  options: { thin?: number; labels?: boolean; fill?: string } = {},
): string {
  const { thin = 1, labels = true, fill = "none" } = options;
  const outline = part.outlines.map((ring) => `M${ring.map((point) => pair(place(point))).join("L")}Z`).join("");
  const line = (points: readonly Point[]): string => `M${points.map((point) => pair(place(point))).join("L")}`;
  return [
    tag("path", { d: outline, ...lineLook("cut", thin), fill, "fill-rule": "evenodd" }),
    ...part.scores.map((points) => tag("path", { d: line(points), ...lineLook("score", thin) })),
    ...part.marks.map((mark) => tag("path", { d: line(mark.line), ...lineLook("position", thin) })),
    ...(labels
      ? part.marks.filter((mark) => mark.label !== "").map((mark) => markLabel(mark.line, mark.label, place))
      : []),
  ].join("");
}

function markLabel(points: readonly Point[], label: string, place: (point: Point) => Point): string {
  const placed = points.map(place);
  const x = placed.reduce((sum, [px]) => sum + px, 0) / placed.length;
  const top = Math.min(...placed.map(([, y]) => y));
  return text(x, top - 1, label, { "font-size": 2.6, "text-anchor": "middle" });
}

/** A point on a part's own material: the middle of the first stretch that a level line at half its height crosses. */
export function pointInside(part: Part): Point {
  const ys = part.outlines.flat().map(([, y]) => y);
  const y = (Math.min(...ys) + Math.max(...ys)) / 2 + 0.37;
  const xs = part.outlines
    .flatMap((ring) => ring.map((point, i) => [point, ring[(i + 1) % ring.length]!] as const))
    .filter(([a, b]) => a[1] <= y !== b[1] <= y)
    .map(([a, b]) => a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]))
    .sort((a, b) => a - b);
  return [(xs[0]! + xs[1]!) / 2, y];
}

function pair([x, y]: Point): string {
  return `${num(x, 3)} ${num(y, 3)}`;
}
