import { heightOf } from "../fit/shape.ts";
import { nearestCount } from "../geometry/nearest.ts";
import type { Kit } from "../kit/kit.ts";
import { rulerStep } from "../units/ruler.ts";
import type { Margins } from "./margins.ts";
import type { Change, Fits } from "./offer.ts";
import type { Refit } from "./refit.ts";

/** Pictures lower than this are not offered, mm. */
const LEAST_HEIGHT = 10;

/** On a step that a ruler shows: the nearest lower picture that fits, or else the nearest higher one; `ways` asks for another order. */
export function heightOffer(kit: Kit, fits: Fits, least: Margins, ways: readonly (1 | -1)[] = [-1, 1]): Change[] {
  const stated = heightOf(kit.fit.shape);
  if (stated === undefined) return [];
  const step = rulerStep(kit.units, "coarse");
  const now = stated / step;
  const change = (count: number): Partial<Refit> => atHeight(kit, count * step, least);
  const allowed = (count: number): boolean => fits(change(count));
  const most = Math.floor((kit.book.leafHeight - least.head - least.tail) / step);
  const towards = {
    [-1]: () => nearestCount(Math.ceil(Math.min(now, most + 1)), -1, Math.ceil(LEAST_HEIGHT / step), allowed),
    1: () => nearestCount(Math.floor(now), 1, most, allowed),
  };
  const count = towards[ways[0]!]() ?? (ways[1] && towards[ways[1]]());
  if (count === undefined) return [];
  return [{ says: [{ kind: "height", height: count * step }], change: change(count) }];
}

/** The kit's own head where enough stays free at the tail; otherwise in the middle of what may be used, on a mark where there is one. */
export function atHeight(kit: Kit, height: number, least: Margins = { head: 0, tail: 0 }): Partial<Refit> {
  const { head, markStep } = kit.fit;
  const { leafHeight } = kit.book;
  if (head !== undefined && head + height <= leafHeight - least.tail) return { height };
  const middle = Math.max(least.head, Math.min((leafHeight - height) / 2, leafHeight - least.tail - height));
  const onMark = Math.floor(middle / markStep) * markStep;
  return { height, head: onMark < least.head ? middle : onMark };
}
