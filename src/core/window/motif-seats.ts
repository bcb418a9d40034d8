import type { Box } from "../geometry/box.ts";
import type { Point } from "../geometry/point.ts";
import { inMm, type MotifWish } from "./motif.ts";

/** Width and height of a motif, mm. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

export function extentOf({ left, top, right, bottom }: Box): Extent {
  return { width: right - left, height: bottom - top };
}

/** What motifs are set on, in the frame of the parts on the book; `light` as it is seen through the hole. */
export interface MotifGround {
  readonly frame: Box;
  readonly hole: Box;
  readonly light: Box | undefined;
}

/** So many motifs that cover no light find a place of their own; of further ones the kit states the place. */
export const SEATS = 4;

/**
 * Upper left corners of motifs on a window. Where a place is stated, the middle of the motif is there. Else one that covers the
 * light stands before it with its foot on the light's floor, and the others go high on the right, low on the left, high on the
 * left and low on the right of the hole, in this order.
 */
export function seatMotifs(
  wishes: readonly Pick<MotifWish, "at" | "coversLight">[],
  sizes: readonly Extent[],
  ground: MotifGround,
): Point[] {
  let free = 0;
  return wishes.map(({ at, coversLight }, i) => {
    const size = sizes[i]!;
    if (at) return stated(at, size, ground);
    if (coversLight) return beforeLight(size, ground);
    free += 1;
    return aside(size, ground, free - 1);
  });
}

function stated(
  [across, down]: NonNullable<MotifWish["at"]>,
  { width, height }: Extent,
  { frame }: MotifGround,
): Point {
  return [
    frame.left + inMm(across, frame.right - frame.left) - width / 2,
    frame.top + inMm(down, frame.bottom - frame.top) - height / 2,
  ];
}

function beforeLight({ width, height }: Extent, { hole, light = hole }: MotifGround): Point {
  return [(light.left + light.right) / 2 - width / 2, Math.min(light.bottom, hole.bottom - 1) - height];
}

/** The upper seats begin a quarter below the hole's top, the lower ones end an eighth above its foot. */
function aside({ width, height }: Extent, { hole }: MotifGround, seat: number): Point {
  const [wide, high] = [hole.right - hole.left, hole.bottom - hole.top];
  const upper = seat % 2 === 0;
  const onRight = upper === seat < 2;
  return [
    onRight ? hole.right - width - 0.05 * wide : hole.left + 0.025 * wide,
    upper ? hole.top + 0.25 * high : hole.bottom - 0.13 * high - height,
  ];
}
