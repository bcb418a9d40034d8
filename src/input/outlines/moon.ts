import type { Size } from "../../core/geometry/box.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import { bow, toleranceOf } from "./bow.ts";
import type { FieldsOf } from "./schema.ts";

/**
 * The lit part of a disc that fills a canvas. Its edge across the disc is half an ellipse with the half-axis |1 − 2·lit| of the
 * disc's, so the lit share is that of the area, too. Source: Meeus, Astronomical Algorithms, "Illuminated Fraction of the Moon's
 * Disk".
 */
export function moon({ lit, side }: FieldsOf<"moon">, size: Size): Ring[] {
  const centre = [size.width / 2, size.height / 2] as const;
  const tolerance = toleranceOf(size);
  const limb = bow(centre, centre, { from: 270, to: 450, tolerance });
  // Back from the foot to the top: on the lit side of the middle for a crescent, beyond it for more than half.
  const terminator = bow(centre, [centre[0] * (1 - 2 * lit), centre[1]], { from: 90, to: -90, tolerance });
  const right: Point[] = [...limb, ...terminator.slice(1, -1)];
  return [side === "right" ? right : right.map(([x, y]): Point => [size.width - x, y])];
}
