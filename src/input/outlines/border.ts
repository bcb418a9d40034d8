import type { Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { FieldPath } from "../files/problem.ts";
import { mmOf } from "../files/span.ts";
import { cornerOf, roundedRing } from "./rectangle.ts";
import { room } from "./room.ts";
import type { FieldsOf } from "./schema.ts";

/** A band stays away from the middle by this share of the shorter side, so that it keeps its opening. */
const LEAST_OPENING = 0.02;

/** The band along the edges of a canvas, as wide at its corners as elsewhere. @throws ProblemError where there is no opening */
export function border({ width, corner }: FieldsOf<"border">, size: Size, at: FieldPath): Ring[] {
  const most = (Math.min(size.width, size.height) / 2) * (1 - LEAST_OPENING);
  const band = room(mmOf(width, size.width), most, { at: [...at, "width"], size });
  const radius = cornerOf(corner, size, at);
  return band > 0 ? [roundedRing(size, 0, radius), roundedRing(size, band, radius - band)] : [];
}
