import type { Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { FieldPath } from "../files/problem.ts";
import { mmOf } from "../files/span.ts";
import { bow, toleranceOf } from "./bow.ts";
import { room } from "./room.ts";
import type { FieldsOf } from "./schema.ts";

/** A band stays away from the middle by this share of the shorter side, so that it keeps its hole. */
const LEAST_HOLE = 0.02;

/** The ellipse that fills a canvas. */
export function oval(size: Size): Ring[] {
  return [ellipse(size, 0)];
}

/** The ellipse with a band round its hole, which is as wide on the axes as stated. @throws ProblemError where there is no hole */
export function ring({ width }: FieldsOf<"ring">, size: Size, at: FieldPath): Ring[] {
  const most = (Math.min(size.width, size.height) / 2) * (1 - LEAST_HOLE);
  const band = room(mmOf(width, size.width), most, { at: [...at, "width"], size });
  return band > 0 ? [ellipse(size, 0), ellipse(size, band)] : [];
}

function ellipse(size: Size, inset: number): Ring {
  const middle = [size.width / 2, size.height / 2] as const;
  const axes = [middle[0] - inset, middle[1] - inset] as const;
  return bow(middle, axes, { from: 0, to: 360, tolerance: toleranceOf(size) }).slice(0, -1);
}
