import type { Ring } from "../geometry/point.ts";
import type { LevelShape } from "./level-map.ts";

/** A closed outline of a picture as typed columns: its last corner is the first one again. */
export interface Outline {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** From where to where it reaches. */
  readonly least: number;
  readonly most: number;
  readonly top: number;
  /** Number of the shape that it bounds, from the lowest. */
  readonly shape: number;
}

/** All outlines, that which reaches highest first: so lines meet most of them in order. */
export function outlinesOf(shapes: readonly LevelShape[]): Outline[] {
  const outlines = shapes.flatMap(({ rings }, shape) => rings.map((ring) => outlineOf(ring, shape)));
  return outlines.sort((a, b) => a.top - b.top);
}

function outlineOf(ring: Ring, shape: number): Outline {
  const [x, y] = [new Float64Array(ring.length + 1), new Float64Array(ring.length + 1)];
  let [least, most, top] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = 0; i <= ring.length && ring[0]; i += 1) {
    const corner = ring[i] ?? ring[0];
    x[i] = corner[0];
    y[i] = corner[1];
    least = Math.min(least, corner[0]);
    most = Math.max(most, corner[0]);
    top = Math.min(top, corner[1]);
  }
  return { x, y, least, most, top, shape };
}
