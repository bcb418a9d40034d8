import { type Affine, mapPoint, mapVector } from "./affine.ts";
import type { Point } from "./point.ts";

/**
 * A piece of an ellipse: centre + cos t · cosAxis + sin t · sinAxis for t from `from` to `from + sweep`.
 * The axes are conjugate half-diameters, so any affine image of an arc has this form too.
 * Angles in radians; with y down and a positive sweep the arc runs clockwise.
 */
export interface EllipseArc {
  readonly centre: Point;
  readonly cosAxis: Point;
  readonly sinAxis: Point;
  readonly from: number;
  readonly sweep: number;
}

/** An arc as SVG path data writes it. */
export interface EndpointArc {
  readonly start: Point;
  readonly end: Point;
  /** Half-axes, both > 0; scaled up together when they are too short to reach. */
  readonly radii: Point;
  /** Angle from the x-axis to the first half-axis, radians. */
  readonly turn: number;
  readonly large: boolean;
  /** True for the direction of growing angles (clockwise with y down). */
  readonly clockwise: boolean;
}

/**
 * The centre form of an arc given by its ends, which must differ.
 * Source: SVG 2 implementation notes, "Conversion from endpoint to center parameterization" and
 * "Correction of out-of-range radii" (F.6.5 and F.6.6 of SVG 1.1).
 */
export function arcFromEnds(arc: EndpointArc): EllipseArc {
  const cos = Math.cos(arc.turn);
  const sin = Math.sin(arc.turn);
  const halfX = (arc.start[0] - arc.end[0]) / 2;
  const halfY = (arc.start[1] - arc.end[1]) / 2;
  const alongX = cos * halfX + sin * halfY;
  const alongY = cos * halfY - sin * halfX;
  const reach = Math.hypot(alongX / arc.radii[0], alongY / arc.radii[1]);
  const rx = arc.radii[0] * Math.max(1, reach);
  const ry = arc.radii[1] * Math.max(1, reach);
  // On the unit circle the chord's half is u; the centre lies at right angles to it.
  const u: Point = [alongX / rx, alongY / ry];
  const half = Math.min(1, Math.hypot(u[0], u[1]));
  const away = (Math.sqrt(1 - half * half) / half) * (arc.large === arc.clockwise ? -1 : 1);
  const unitCentre: Point = [away * u[1], -away * u[0]];
  const from = Math.atan2(u[1] - unitCentre[1], u[0] - unitCentre[0]);
  const to = Math.atan2(-u[1] - unitCentre[1], -u[0] - unitCentre[0]);
  const cosAxis: Point = [cos * rx, sin * rx];
  const sinAxis: Point = [-sin * ry, cos * ry];
  const centre: Point = [
    (arc.start[0] + arc.end[0]) / 2 + cosAxis[0] * unitCentre[0] + sinAxis[0] * unitCentre[1],
    (arc.start[1] + arc.end[1]) / 2 + cosAxis[1] * unitCentre[0] + sinAxis[1] * unitCentre[1],
  ];
  return { centre, cosAxis, sinAxis, from, sweep: sweepBetween(from, to, arc.clockwise) };
}

/** The image of an arc. */
export function mapArc(map: Affine, arc: EllipseArc): EllipseArc {
  return {
    centre: mapPoint(map, arc.centre),
    cosAxis: mapVector(map, arc.cosAxis),
    sinAxis: mapVector(map, arc.sinAxis),
    from: arc.from,
    sweep: arc.sweep,
  };
}

/** The point of the arc's ellipse at angle `t`, radians. */
export function arcPoint({ centre, cosAxis, sinAxis }: EllipseArc, t: number): Point {
  const cos = Math.cos(t);
  const sin = Math.sin(t);
  return [centre[0] + cos * cosAxis[0] + sin * sinAxis[0], centre[1] + cos * cosAxis[1] + sin * sinAxis[1]];
}

function sweepBetween(from: number, to: number, clockwise: boolean): number {
  const sweep = to - from;
  if (clockwise && sweep < 0) return sweep + 2 * Math.PI;
  if (!clockwise && sweep > 0) return sweep - 2 * Math.PI;
  return sweep;
}
