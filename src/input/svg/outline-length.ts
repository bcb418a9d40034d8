import type { Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { MOST_LENGTH } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";
import type { SvgPicture } from "./svg-picture.ts";

/** Refuses a picture whose leaves would each meet thousands of outlines. @throws PictureLimit at the shape that is too much */
export function checkLength({ width, height, shapes }: Pick<SvgPicture, "width" | "height" | "shapes">): void {
  let length = 0;
  for (const { line, rings } of shapes) {
    for (const ring of rings) length += reach(ring, 0, width) + reach(ring, 1, height);
    if (length > MOST_LENGTH) throw new PictureLimit(line, say.pictureLongOutlines({ most: MOST_LENGTH }));
  }
}

/** How far an outline goes along an axis, there and back, inside the box, in lengths of the box. */
function reach(ring: Ring, axis: 0 | 1, side: number): number {
  const inside = (value: number): number => Math.max(0, Math.min(side, value));
  return ring.reduce((sum, point, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return sum + Math.abs(inside(next[axis]) - inside(point[axis])) / side;
  }, 0);
}
