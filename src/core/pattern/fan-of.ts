import type { Fan } from "../fan/fan.ts";
import { layFront } from "../fan/front.ts";
import { type FrontCurve, frontCurve } from "../fan/front-curve.ts";
import { frontDepth } from "../kit/cut-kit.ts";
import type { PatternBase } from "./pattern.ts";

/** The fan of a computed pattern. */
export function fanOf(pattern: PatternBase): Fan {
  const { book, fit } = pattern;
  return {
    leaves: book.leaves,
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    opening: fit.opening,
    spine: fit.spine,
    direction: book.direction,
  };
}

/** The curve through the front tips of a computed pattern. */
export function curveOf(pattern: PatternBase): FrontCurve {
  const { fit } = pattern;
  const fan = fanOf(pattern);
  const range = { first: fit.firstLeaf - 1, count: fit.lastLeaf - fit.firstLeaf + 1 };
  const depth = frontDepth(pattern);
  return frontCurve(fan, range, layFront(fan, range, depth, fit.view), depth);
}
