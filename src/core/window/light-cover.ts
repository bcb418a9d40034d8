import type { FrontCurve } from "../fan/front-curve.ts";
import { type Area, areaOfRings, intersect, outlinesOf, rectangle, sizeOf, subtract, unite } from "../geometry/area.ts";
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
  const silhouette: Area = [rectangle(centre.x - half, floor - light.height, centre.x + half, floor)];
  const seen = intersect(silhouette, toFront(guide.outlines, curve, wish.panel));
  const placed = motifs.map((motif) => toFront(setOutlines(motif), curve, wish.panel));
  const card = placed.reduce<Area>(unite, []);
  const filled = placed.reduce<Area>((sum, area) => unite(sum, areaOfRings(outlinesOf(area).outer, "nonzero")), []);
  const whole = light.diameter * light.height;
  const beside = sizeOf(subtract(seen, filled)) / whole;
  return { beside, through: sizeOf(subtract(seen, card)) / whole - beside };
}
