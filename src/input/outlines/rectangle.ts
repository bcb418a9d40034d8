import type { Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { FieldPath } from "../files/problem.ts";
import { mmOf } from "../files/span.ts";
import { bow, toleranceOf } from "./bow.ts";
import { room } from "./room.ts";
import type { FieldsOf } from "./schema.ts";

/** The rectangle that fills a canvas. @throws ProblemError where its corners are rounder than its sides are long */
export function rectangle({ corner }: FieldsOf<"rectangle">, size: Size, at: FieldPath): Ring[] {
  return [roundedRing(size, 0, cornerOf(corner, size, at))];
}

/** The radius of round corners, mm. @throws ProblemError where they are rounder than the sides are long */
export function cornerOf(corner: FieldsOf<"rectangle">["corner"], size: Size, at: FieldPath): number {
  if (corner === undefined) return 0;
  return room(mmOf(corner, size.width), Math.min(size.width, size.height) / 2, { at: [...at, "corner"], size });
}

/** A rectangle inside a canvas, `inset` from its edges, with round corners. */
export function roundedRing(size: Size, inset: number, radius: number): Ring {
  const [right, bottom] = [size.width - inset, size.height - inset];
  if (radius <= 0)
    return [
      [inset, inset],
      [right, inset],
      [right, bottom],
      [inset, bottom],
    ];
  const tolerance = toleranceOf(size);
  const quarter = (x: number, y: number, from: number) =>
    bow([x, y], [radius, radius], { from, to: from + 90, tolerance });
  return [
    ...quarter(inset + radius, inset + radius, 180),
    ...quarter(right - radius, inset + radius, 270),
    ...quarter(right - radius, bottom - radius, 0),
    ...quarter(inset + radius, bottom - radius, 90),
  ];
}
