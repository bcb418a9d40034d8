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

/**
 * A piece of an upright ellipse as points, its start among them. Degrees run clockwise from the right, as y runs down: 270 is
 * the top.
 */
export function bow(
  centre: Point,
  [across, down]: Point,
  { from, to, tolerance }: { readonly from: number; readonly to: number; readonly tolerance: number },
): Point[] {
  const arc: EllipseArc = {
    centre,
    cosAxis: [across, 0],
    sinAxis: [0, down],
    from: (from * Math.PI) / 180,
    sweep: ((to - from) * Math.PI) / 180,
  };
  return [arcPoint(arc, arc.from), ...arcPoints(arc, arcChords(arc, tolerance))];
}
