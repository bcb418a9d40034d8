import { boxOf, type Size } from "../../core/geometry/box.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import type { FieldsOf } from "./schema.ts";

/** The box that a star of the radius 1 needs, one point upright. */
export function starShape(fields: FieldsOf<"star">): Size {
  const { left, right, top, bottom } = boxOf([corners(fields)]);
  return { width: right - left, height: bottom - top };
}

/** The star that fills a canvas, one point upright. */
export function star(fields: FieldsOf<"star">, size: Size): Ring[] {
  const ring = corners(fields);
  const { left, right, top, bottom } = boxOf([ring]);
  const [across, down] = [size.width / (right - left), size.height / (bottom - top)];
  return [ring.map(([x, y]): Point => [(x - left) * across, (y - top) * down])];
}

/** Points at the radius 1 and the corners between them, clockwise from the top. */
function corners({ points, inner }: FieldsOf<"star">): Point[] {
  return Array.from({ length: 2 * points }, (_, i): Point => {
    const angle = (Math.PI * i) / points;
    const radius = i % 2 === 0 ? 1 : inner;
    return [radius * Math.sin(angle), -radius * Math.cos(angle)];
  });
}
