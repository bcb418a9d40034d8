import { boxOf } from "../../core/geometry/box.ts";
import { levelCrossings, stretchesOf } from "../../core/geometry/crossings.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Part, PositionMark } from "../../core/window/part.ts";
import { markText } from "../../words/parts.ts";
import { lineLook } from "./line-kinds.ts";
import { shortLine, shortRings } from "./short-path.ts";
import { tag, text } from "./svg-text.ts";

/** Decimals of a millimetre that cut lines keep. */
const FINE = 3;

/** How a part is drawn. */
interface PartLook {
  /** Lines so many times as strong as on sheets to cut by. */
  readonly times?: number;
  readonly labels?: boolean;
  readonly fill?: string;
  /** Writes the outlines; as they are cut where nothing is given. */
  readonly outline?: (rings: readonly (readonly Point[])[]) => string;
}

/** A part's lines at a place: cut lines full, scores dashed, positions dash-dot with their labels. */
export function partDrawing(part: Part, place: (point: Point) => Point, options: PartLook = {}): string {
  const { times = 1, labels = true, fill = "none", outline: drawn = toCut } = options;
  const outline = drawn(part.outlines.map((ring) => ring.map(place)));
  const line = (points: readonly Point[]): string => shortLine(points.map(place), FINE);
  const labelled = labels ? part.marks.filter((mark) => mark.kind && labelFits(mark)) : [];
  return [
    tag("path", { d: outline, ...lineLook("cut", times), fill, "fill-rule": "evenodd" }),
    ...part.scores.map((points) => tag("path", { d: line(points), ...lineLook("score", times) })),
    ...part.marks.map((mark) => tag("path", { d: line(mark.line), ...lineLook("position", times) })),
    ...labelled.map((mark) => markLabel(mark, place)),
  ].join("");
}

function toCut(rings: readonly (readonly Point[])[]): string {
  return shortRings(rings, FINE);
}

/** Width of a label's letters, as a share of their size. */
const LETTER = 0.5;
const LABEL_SIZE = 2.6;

function markLabel({ line, kind }: PositionMark, place: (point: Point) => Point): string {
  const placed = line.map(place);
  const x = placed.reduce((sum, [px]) => sum + px, 0) / placed.length;
  const top = Math.min(...placed.map(([, y]) => y));
  return text(x, top - 1, markText(kind), { "font-size": LABEL_SIZE, "text-anchor": "middle" });
}

/** Whether a mark is as wide as its label, so that the label can stand at it. */
export function labelFits({ line, kind }: PositionMark): boolean {
  const xs = line.map(([x]) => x);
  return markText(kind).length * LABEL_SIZE * LETTER <= Math.max(...xs) - Math.min(...xs);
}

/**
 * A spot on a part's own material with room for a letter: the middle of the first stretch of five level lines that is wide
 * enough and bears no mark's words. Undefined where none is wide enough.
 */
export function spotInside(part: Part, room: number): Point | undefined {
  const ys = part.outlines.flat().map(([, y]) => y);
  const top = Math.min(...ys);
  const height = Math.max(...ys) - top;
  const stretches = [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => {
    const y = top + share * height + JUST_BELOW;
    return stretchesOf(levelCrossings(part.outlines, y)).map(({ from, to }) => ({
      x: (from + to) / 2,
      y,
      wide: to - from,
    }));
  });
  const wide = stretches.filter((stretch) => stretch.wide >= room);
  const spot = wide.find((stretch) => !part.marks.some((mark) => bearsWords(mark, stretch, room))) ?? wide[0];
  return spot && [spot.x, spot.y];
}

/** Whether a mark's words stand within a letter's room of a spot. */
function bearsWords(mark: PositionMark, { x, y }: { readonly x: number; readonly y: number }, room: number): boolean {
  if (!mark.kind || !labelFits(mark)) return false;
  const { left, right, top } = boxOf([mark.line]);
  return x > left - room && x < right + room && y > top - LABEL_SIZE - room / 2 && y < top + room / 2;
}

/** Lines are laid a little below round shares of a part's height, so that they run through no corner, mm. */
const JUST_BELOW = 0.013;
