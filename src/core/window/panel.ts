import type { FrontCurve } from "../fan/front-curve.ts";
import type { Area } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";

/** wrap: cut as unrolled along the tips, for a panel that bends; flat: cut as seen from the front, for a stiff one. */
export type PanelKind = "wrap" | "flat";

/** Points are set no further apart than this before a curve bends them, mm. */
const DENSE = 0.5;

/** From the front (x from the picture's left edge) to the panel's own frame (x from the fan's middle, along the tips or straight). */
export function toPanel(area: Area, curve: FrontCurve, kind: PanelKind): Area {
  return area.map((ring) =>
    ring.flatMap((point, i) =>
      dense(point, ring[(i + 1) % ring.length]!).map(([x, y]) => [panelX(x, curve, kind), y] as const),
    ),
  );
}

/** From the panel's own frame back to what is seen from the front: x from the fan's middle, straight across. */
export function toFront(area: Area, curve: FrontCurve, kind: PanelKind): Area {
  return kind === "flat" ? area : area.map((ring) => ring.map(([x, y]) => [curve.atArc(x).x, y] as const));
}

export function panelX(across: number, curve: FrontCurve, kind: PanelKind): number {
  const at = curve.atAcross(across);
  return kind === "wrap" ? at.arc : at.x;
}

function dense(from: Point, to: Point): Point[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(to[0] - from[0]) / DENSE));
  return Array.from(
    { length: pieces },
    (_, i) => [from[0] + ((to[0] - from[0]) * i) / pieces, from[1] + ((to[1] - from[1]) * i) / pieces] as const,
  );
}
