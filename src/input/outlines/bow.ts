import type { Size } from "../../core/geometry/box.ts";
import { arcChords, arcPoints } from "../../core/geometry/chords.ts";
import { arcPoint, type EllipseArc } from "../../core/geometry/ellipse-arc.ts";
import type { Point } from "../../core/geometry/point.ts";

/** The longer side of an outline in chord errors, as of picture files. */
const CHORD_ERRORS_PER_SIDE = 200_000;

/** How far a chord may stray from the curve of an outline. */
export function toleranceOf({ width, height }: Size): number {
  return Math.max(width, height) / CHORD_ERRORS_PER_SIDE;
}

/** Bows that begin at an eighth of a turn have points where they reach furthest, which keeps figures as large as stated. */
const EIGHTH = 45;

/**
 * A piece of an upright ellipse as points, its start among them. Degrees run clockwise from the right, as y runs down: 270 is
 * the top.
 */
export function bow(
  centre: Point,
  [across, down]: Point,
  { from, to, tolerance }: { readonly from: number; readonly to: number; readonly tolerance: number },
): Point[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / EIGHTH - 1e-9));
  const step = (((to - from) / pieces) * Math.PI) / 180;
  const arcs = Array.from({ length: pieces }, (_, i): EllipseArc => {
    const begin = (from * Math.PI) / 180 + i * step;
    return { centre, cosAxis: [across, 0], sinAxis: [0, down], from: begin, sweep: step };
  });
  return [arcPoint(arcs[0]!, arcs[0]!.from), ...arcs.flatMap((arc) => arcPoints(arc, arcChords(arc, tolerance)))];
}
