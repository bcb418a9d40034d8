import type { Point } from "../../core/geometry/point.ts";
import type { Part, PositionMark } from "../../core/window/part.ts";
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
      ? part.marks
          .filter((mark) => mark.label !== "" && labelFits(mark))
          .map((mark) => markLabel(mark.line, mark.label, place))
      : []),
  ].join("");
}

/** Width of a label's letters, as a share of their size. */
const LETTER = 0.5;
const LABEL_SIZE = 2.6;

function markLabel(points: readonly Point[], label: string, place: (point: Point) => Point): string {
  const placed = points.map(place);
  const x = placed.reduce((sum, [px]) => sum + px, 0) / placed.length;
  const top = Math.min(...placed.map(([, y]) => y));
  return text(x, top - 1, label, { "font-size": LABEL_SIZE, "text-anchor": "middle" });
}

/** Whether a mark is as wide as its label, so that the label can stand at it. */
export function labelFits(mark: PositionMark): boolean {
  const xs = mark.line.map(([x]) => x);
  return mark.label.length * LABEL_SIZE * LETTER <= Math.max(...xs) - Math.min(...xs);
}

/** A spot on a part's own material with room for a letter: the middle of the widest stretch among level lines through it. Undefined where none is wide enough. */
export function spotInside(part: Part, room: number): Point | undefined {
  const ys = part.outlines.flat().map(([, y]) => y);
  const top = Math.min(...ys);
  const height = Math.max(...ys) - top;
  const stretches = [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => stretchesAt(part, top + share * height + 0.013));
  const first = stretches.find((stretch) => stretch.to - stretch.from >= room);
  return first && [(first.from + first.to) / 2, first.y];
}

function stretchesAt(part: Part, y: number): { from: number; to: number; y: number }[] {
  const xs = part.outlines
    .flatMap((ring) => ring.map((point, i) => [point, ring[(i + 1) % ring.length]!] as const))
    .filter(([a, b]) => a[1] <= y !== b[1] <= y)
    .map(([a, b]) => a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]))
    .sort((a, b) => a - b);
  return Array.from({ length: Math.floor(xs.length / 2) }, (_, i) => ({ from: xs[2 * i]!, to: xs[2 * i + 1]!, y }));
}

function pair([x, y]: Point): string {
  return `${num(x, 3)} ${num(y, 3)}`;
}
