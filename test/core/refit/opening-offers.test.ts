import { describe, expect, it } from "vitest";
import { isFailure } from "../../../src/core/findings/outcome.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { tryFit } from "../../../src/core/pattern/compute.ts";
import { layOutPicture } from "../../../src/core/pattern/face.ts";
import type { Offer } from "../../../src/core/refit/offer.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { patternOf } from "../pattern/computed.ts";
import { opened } from "./opened.ts";

describe("an opening that offersFor(kit, refit) changes", () => {
  const offeredOpening = (kit: Kit, refit: Refit): Offer => {
    const found = offersFor(kit, refit).find(({ says }) => says[0]!.kind === "opening");
    if (!found) throw new Error("no other opening is offered");
    return found;
  };

  it.each([
    ["wider, for more width", opened(10, "pictureLeaves"), -1],
    ["narrower, for less height", opened(170, "height"), 1],
    ["narrower from between two degrees", opened(169.5, "height"), 1],
  ] as const)("is the nearest that fits: %s", (_, kit, nearer) => {
    const { refit, says } = offeredOpening(kit, {});
    const degrees = refit.openingDegrees!;
    expect(says).toEqual([{ kind: "opening", degrees }]);
    expect(Number.isInteger(degrees)).toBe(true);
    // The picture begins 30 mm from the head of a leaf of 120, and 8 stay free at its tail.
    const stands = (openingDegrees: number): boolean => {
      const layout = layOutPicture(refitKit(kit, { openingDegrees }));
      return !isFailure(layout) && layout.value.solution.height <= 82;
    };
    expect([stands(degrees), stands(degrees + nearer)]).toEqual([true, false]);
  });

  /*
   * Leaves on one side of the fan show most when it is half open, so a picture that is too high there fits both narrower and
   * wider. Every degree is tried here, where the program steps.
   */
  it.each([100, 121, 123, 150])("is the nearer one of a narrower and a wider: %d°", (degrees) => {
    // Its author's own picture goes from head to tail, so no paper need stay free.
    const fit = { borderLeaves: [32, 0] as const, head: undefined };
    const leafHeight = patternOf(opened(degrees, "height", { fit })).fit.height;
    const own = opened(degrees, "height", { book: { leafHeight }, fit });
    const low = { leafHeight: 18 };
    const kit = refitKit(own, low);
    expect(tryFit(kit)).toBeDefined();
    const all = Array.from({ length: 176 }, (_, i) => i + 5);
    const fitting = all.filter((openingDegrees) => tryFit(refitKit(kit, { openingDegrees })) === undefined);
    const nearest = fitting.toSorted((a, b) => Math.abs(a - degrees) - Math.abs(b - degrees))[0];
    expect([fitting.some((one) => one < degrees), fitting.some((one) => one > degrees)]).toEqual([true, true]);
    expect(offeredOpening(own, low).refit.openingDegrees).toBe(nearest);
  });

  it("is sought once round, for a picture that is read walking round", () => {
    const along = opened(358, "pictureLeaves", { fit: { view: "along" } });
    expect(tryFit(along)).toBeUndefined();
    // 40 leaves show no more than once round their tips; by hand 361° is beyond it, and the whole degree below is 360°.
    expect(offeredOpening(along, { openingDegrees: 361 }).refit.openingDegrees).toBe(360);
    expect(offeredOpening(along, { openingDegrees: 360.5 }).refit.openingDegrees).toBe(360);
  });
});
