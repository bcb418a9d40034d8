import type { FrontCurve } from "../fan/front-curve.ts";
import { type Area, intersect, outlinesOf, rectangle, signedArea, sizeOf, subtract } from "../geometry/area.ts";
import { clipArea } from "../geometry/clip-ring.ts";
import type { Ring } from "../geometry/point.ts";
import type { Pocket } from "../light/light.ts";
import { setOutlines } from "./motif.ts";
import { toFront } from "./panel.ts";
import type { BookWindow } from "./window.ts";

/** What of the light is seen through the window from the front, as shares of its silhouette. */
export interface LightCover {
  /** Past the motifs. */
  readonly beside: number;
  /** Through openings that are cut in them. */
  readonly through: number;
}

/** The window closed, as seen from straight before it: how much of the light its motifs leave in sight. */
export function lightCover(
  { wish, guide, motifs }: Pick<BookWindow, "wish" | "guide" | "motifs">,
  { light, floor, centre }: Pocket,
  curve: FrontCurve,
): LightCover {
  const half = light.diameter / 2;
  const silhouette = rectangle(centre.x - half, floor - light.height, centre.x + half, floor);
  const seen = intersect([silhouette], toFront(guide.outlines, curve, wish.panel));
  const placed = motifs.map((motif) => toFront(setOutlines(motif), curve, wish.panel));
  const card = placed.flatMap((area) => coveringOf(area, silhouette));
  const filled = placed.flatMap((area) => coveringOf(outlinesOf(area).outer, silhouette));
  const whole = light.diameter * light.height;
  const beside = sizeOf(subtract(seen, filled)) / whole;
  return { beside, through: sizeOf(subtract(seen, card)) / whole - beside };
}

/** What of an area lies over a convex outline; outer outlines run the same way whatever the area, so that areas cover together. */
function coveringOf(area: Area, convex: Ring): Area {
  const isReversed = area.reduce((sum, ring) => sum + signedArea(ring), 0) < 0;
  return clipArea(isReversed ? area.map((ring) => ring.toReversed()) : area, convex);
}
