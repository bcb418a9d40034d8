import type { Size } from "../../core/geometry/box.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import { bow, toleranceOf } from "./bow.ts";

/** Half the diagonal of a square with the side 1. */
const HALF = Math.SQRT1_2;

/** A square on its corner with half a circle on each of its upper sides: as wide as both together, for the side 1. */
export const HEART_SHAPE: Size = { width: HALF + 1, height: (3 * HALF + 1) / 2 };

/** The heart that fills a canvas. */
export function heart(size: Size): Ring[] {
  const across = size.width / HEART_SHAPE.width;
  const down = size.height / HEART_SHAPE.height;
  const tolerance = toleranceOf(size);
  const middle = HEART_SHAPE.width / 2;
  // The half circles' centres are the middles of the upper sides.
  const lobe = (x: number, from: number): Point[] =>
    bow([x * across, 0.5 * down], [0.5 * across, 0.5 * down], { from, to: from + 180, tolerance });
  const left = lobe(middle - HALF / 2, 135);
  const right = lobe(middle + HALF / 2, 225);
  return [[...left, ...right.slice(1), [size.width / 2, size.height]]];
}
