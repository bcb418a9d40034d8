import type { FrontCurve } from "../fan/front-curve.ts";
import type { Area } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";

/** wrap: cut as unrolled along the tips, for a panel that bends; flat: cut as seen from the front, for a stiff one. */
export type PanelKind = "wrap" | "flat";

/** Points are set no further apart than this before a curve bends them, mm. */
const DENSE = 0.5;

/** From the front (x from the picture's left edge) to the panel's own frame (x from the fan's middle, along the tips or straight). */
export function toPanel(area: Area, curve: FrontCurve, kind: PanelKind): Area {
  return area.map((ring) => ring.flatMap((point, i) => bent(point, ring[i + 1] ?? ring[0]!, curve, kind)));
}

/** From the panel's own frame back to what is seen from the front: x from the fan's middle, straight across. */
export function toFront(area: Area, curve: FrontCurve, kind: PanelKind): Area {
  return kind === "flat" ? area : area.map((ring) => ring.map(([x, y]) => [curve.atArc(x).x, y] as const));
}

export function panelX(across: number, curve: FrontCurve, kind: PanelKind): number {
  const at = curve.atAcross(across);
  return kind === "wrap" ? at.arc : at.x;
}

/** A side from its first point to before its last. */
function bent(from: Point, to: Point, curve: FrontCurve, kind: PanelKind): Point[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(to[0] - from[0]) / DENSE));
  const points: Point[] = [];
  for (let i = 0; i < pieces; i += 1) {
    const x = from[0] + ((to[0] - from[0]) * i) / pieces;
    points.push([panelX(x, curve, kind), from[1] + ((to[1] - from[1]) * i) / pieces]);
  }
  return points;
}
