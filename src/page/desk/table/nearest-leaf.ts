import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import type { PicturePlace } from "../../../core/makeability/picture-place.ts";
import { pictureLeaves } from "../../../core/pattern/pattern.ts";
import type { Shown } from "./shown.ts";

/** The middle of a picture leaf's column on the front, mm. */
export function middleOf(place: PicturePlace, leaf: LeafNumber): number {
  const { left, right } = place.column(leaf);
  return (left + right) / 2;
}

/** Which picture leaf, from 0, has its column nearest to a place across the front, mm. */
export function nearestLeaf({ pattern, place }: Pick<Shown, "pattern" | "place">, x: number): number {
  const far = pictureLeaves(pattern).map(({ leaf }) => Math.abs(middleOf(place, leaf) - x));
  return far.indexOf(Math.min(...far));
}
