import type { Kit } from "../../../src/core/kit/kit.ts";
import { toRadians } from "../../../src/core/units/angle.ts";
import { type KitChanges, madeKit } from "../kit/made-kit.ts";

/** The made kit with a stated opening (degrees) and the picture leaves or the height solved for it. */
export function opened(degrees: number, solved: "pictureLeaves" | "height", changes: KitChanges = {}): Kit {
  const opening = toRadians(degrees);
  const shape =
    solved === "height"
      ? ({ solve: "height", pictureLeaves: "fill", opening } as const)
      : ({ solve: "pictureLeaves", height: 40, opening } as const);
  return madeKit({ ...changes, fit: { shape, ...changes.fit } });
}
