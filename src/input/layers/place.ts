import { type Affine, compose, translation } from "../../core/geometry/affine.ts";
import type { Size } from "../../core/geometry/box.ts";
import { mmOf } from "../files/span.ts";
import type { PieceMatter } from "./schema.ts";

/** Where a layer stands in its box, as the front matter says it. */
export type Place = Pick<PieceMatter, "at" | "width" | "height" | "turn" | "mirror">;

/** A layer without a place fills its box. */
export const FILLING: Place = { at: undefined, width: undefined, height: undefined, turn: 0, mirror: false };

/**
 * The size of something placed in a box, before it is turned, in mm. `shape` is its own size in any unit: one stated side keeps
 * its shape, two stretch it, and with none it is as large as fits into the box when it is turned.
 */
export function placedSize(shape: Size, place: Place, box: Size): Size {
  const width = place.width && mmOf(place.width, box.width);
  const height = place.height && mmOf(place.height, box.height);
  if (width !== undefined && height !== undefined) return { width, height };
  const scale =
    width !== undefined
      ? width / shape.width
      : height !== undefined
        ? height / shape.height
        : fitting(shape, place.turn, box);
  return { width: shape.width * scale, height: shape.height * scale };
}

/** The factor by which a turned shape just fits into a box. */
function fitting({ width, height }: Size, turn: number, box: Size): number {
  const [cos, sin] = cosSin(turn);
  const across = Math.abs(width * cos) + Math.abs(height * sin);
  const down = Math.abs(width * sin) + Math.abs(height * cos);
  return Math.min(box.width / across, box.height / down);
}

/** The map from a canvas with its corner at 0,0 to its place in the box: sized, mirrored, turned clockwise, and moved. */
export function placement(canvas: Size, place: Place, box: Size): Affine {
  const size = placedSize(canvas, place, box);
  const [cos, sin] = cosSin(place.turn);
  const across = place.at ? mmOf(place.at[0], box.width) : box.width / 2;
  const down = place.at ? mmOf(place.at[1], box.height) : box.height / 2;
  const scale: Affine = [
    ((place.mirror ? -1 : 1) * size.width) / canvas.width,
    0,
    0,
    size.height / canvas.height,
    0,
    0,
  ];
  const centred = compose(scale, translation(-canvas.width / 2, -canvas.height / 2));
  return compose(translation(across, down), compose([cos, sin, -sin, cos, 0, 0], centred));
}

/** Cosine and sine of degrees; exact at quarter turns. */
function cosSin(degrees: number): [cos: number, sin: number] {
  const quarters = degrees / 90;
  if (!Number.isInteger(quarters)) return [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const turned = (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  )[((quarters % 4) + 4) % 4]!;
  return [...turned];
}
