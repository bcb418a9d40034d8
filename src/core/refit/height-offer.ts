import { heightOf } from "../fit/shape.ts";
import { nearestCount } from "../geometry/nearest.ts";
import type { Kit } from "../kit/kit.ts";
import { rulerStep } from "../units/ruler.ts";
import type { Change, Fits } from "./offer.ts";
import type { Refit } from "./refit.ts";

/** Pictures lower than this are not offered, mm. */
const LEAST_HEIGHT = 10;

/** On a step that a ruler shows: the nearest lower picture that fits, or else the nearest higher one; `ways` asks for another order. */
export function heightOffer(kit: Kit, fits: Fits, ways: readonly (1 | -1)[] = [-1, 1]): Change[] {
  const stated = heightOf(kit.fit.shape);
  if (stated === undefined) return [];
  const step = rulerStep(kit.units, "coarse");
  const now = stated / step;
  const change = (count: number): Partial<Refit> => atHeight(kit, count * step);
  const allowed = (count: number): boolean => fits(change(count));
  const most = Math.floor(kit.book.leafHeight / step);
  const towards = {
    [-1]: () => nearestCount(Math.ceil(Math.min(now, most + 1)), -1, Math.ceil(LEAST_HEIGHT / step), allowed),
    1: () => nearestCount(Math.floor(now), 1, most, allowed),
  };
  const count = towards[ways[0]!]() ?? (ways[1] && towards[ways[1]]());
  if (count === undefined) return [];
  return [{ says: [{ kind: "height", height: count * step }], change: change(count) }];
}

/** The kit's own head where the picture still lies on the leaf with it; otherwise in the middle, on a mark. */
export function atHeight(kit: Kit, height: number): Partial<Refit> {
  const { head, markStep } = kit.fit;
  if (head !== undefined && head + height <= kit.book.leafHeight) return { height };
  const middle = Math.max(0, (kit.book.leafHeight - height) / 2);
  return { height, head: Math.floor(middle / markStep) * markStep };
}
