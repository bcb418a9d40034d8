import type { Point } from "./point.ts";

/** An upright rectangle; y down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Width and height; both > 0. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The box of a size whose upper left corner is at (left, top). */
export function boxAt(left: number, top: number, { width, height }: Size): Box {
  return { left, top, right: left + width, bottom: top + height };
}

/** The smallest box round all points. */
export function boxOf(rings: readonly (readonly Point[])[]): Box {
  const box = {
    left: Number.POSITIVE_INFINITY,
    right: Number.NEGATIVE_INFINITY,
    top: Number.POSITIVE_INFINITY,
    bottom: Number.NEGATIVE_INFINITY,
  };
  for (const ring of rings) {
    for (const point of ring) {
      const x = point[0];
      const y = point[1];
      if (x < box.left) box.left = x;
      if (x > box.right) box.right = x;
      if (y < box.top) box.top = y;
      if (y > box.bottom) box.bottom = y;
    }
  }
  return box;
}
