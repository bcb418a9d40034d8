import { type Fan, leafAngle, leafRoot, type Place } from "../../core/fan/fan.ts";
import { type LeafRange, layFront } from "../../core/fan/front.ts";
import { type FrontCurve, frontCurve } from "../../core/fan/front-curve.ts";
import type { RoundData } from "../../output/data/round-data.ts";

/** A place on the panel's front with the direction (unit) that looks out of the book there. */
export interface PanelPlace extends Place {
  readonly outX: number;
  readonly outZ: number;
}

/** The book's fan at an opening (radians). */
export function fanAt(data: RoundData, opening: number): Fan {
  const { leaves, leafWidth, blockThickness, direction } = data.book;
  return { leaves, leafWidth, blockThickness, direction, opening, spine: data.fit.spine };
}

/**
 * How wide the picture shows at an opening, mm, and that width over the width that keeps the drawn shape (1 is true).
 * The width is the extent of the front tips' cells; at the kit's own opening the ratio is the fit's `stretch`.
 */
export function shapeAt(data: RoundData, opening: number): { readonly width: number; readonly stretch: number } {
  const width = widthAt(data, opening);
  return { width, stretch: (data.fit.stretch * width) / widthAt(data, data.fit.opening) };
}

/** A place in a fan; `leaf` counts from 0 and may lie between two leaves, `radius` is measured from the root, mm. */
export function placeIn(fan: Fan, leaf: number, radius: number, aside = 0): Place {
  const angle = leafAngle(fan, leaf);
  const root = leafRoot(fan, leaf);
  return {
    x: root.x + radius * Math.sin(angle) + aside * Math.cos(angle),
    z: root.z + radius * Math.cos(angle) - aside * Math.sin(angle),
  };
}

/** The curve through the front level's tips, which a window lies on. */
export function curveIn(data: RoundData, fan: Fan): FrontCurve {
  const depth = data.levels[0]!.depth;
  return frontCurve(fan, rangeOf(data), layFront(fan, rangeOf(data), depth, "front"), depth);
}

/**
 * Where the window stands: from a part's own x to the fan. `wrap`: x runs along the front level's tips from the fan's middle;
 * `flat`: straight across, in the plane that touches the foremost tip.
 */
export function panelIn(data: RoundData, fan: Fan, panel: "wrap" | "flat"): (x: number) => PanelPlace {
  const curve = curveIn(data, fan);
  if (panel === "flat") {
    const z = Math.max(...curve.points.map((point) => point.z));
    return (x) => ({ x, z, outX: 0, outZ: 1 });
  }
  return (arc) => {
    const { x, z } = curve.atArc(arc);
    const [before, after] = [curve.atArc(arc - NEAR), curve.atArc(arc + NEAR)];
    const length = Math.hypot(after.x - before.x, after.z - before.z);
    return { x, z, outX: (before.z - after.z) / length, outZ: (after.x - before.x) / length };
  };
}

/** Half the stretch of the curve that a panel's direction is taken from, mm. */
const NEAR = 1.5;

function widthAt(data: RoundData, opening: number): number {
  return layFront(fanAt(data, opening), rangeOf(data), data.levels[0]!.depth, data.fit.view).width;
}

function rangeOf({ fit }: RoundData): LeafRange {
  return { first: fit.firstLeaf - 1, count: fit.lastLeaf - fit.firstLeaf + 1 };
}
