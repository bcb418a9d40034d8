import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { rulerStep } from "../units/ruler.ts";
import { heightOffer } from "./height-offer.ts";
import type { Margins } from "./margins.ts";
import type { Change, Fits } from "./offer.ts";

/** All depths less by one share, to the hundredth, so that the deepest flap clears the gutter. */
export function depthOffer(kit: Kit, fits: Fits): Change[] {
  const depths = shallower(kit, 1).find((one) => fits({ depths: one }));
  return depths ? [{ says: [{ kind: "depths", depths }], change: { depths } }] : [];
}

/** Where no single change helps: shallower levels and another height together. Shares are tried in steps of 5 %. */
export function shallowerAndLower(kit: Kit, fits: Fits, least: Margins): Change[] {
  for (const depths of shallower(kit, 5)) {
    const [lower] = heightOffer(kit, (change) => fits({ ...change, depths }), least);
    if (lower) return [{ says: [{ kind: "depths", depths }, ...lower.says], change: { ...lower.change, depths } }];
  }
  return [];
}

/** The levels' depths less by `percent`, twice that … up to 60 %, on a step that a ruler shows, still one behind the other. */
export function shallower(kit: Kit, percent: number): number[][] {
  const step = rulerStep(kit.units, "fine");
  const shares = Array.from({ length: 60 / percent }, (_, i) => 1 - ((i + 1) * percent) / 100);
  const all = shares.map((share) =>
    kit.levels.map((level) =>
      Math.max(Math.ceil(BOUNDS.depth.least / step) * step, Math.round((level.depth * share) / step) * step),
    ),
  );
  return all.filter((depths) => depths.every((depth, i) => i === 0 || depth > depths[i - 1]!));
}
