import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { toRadians } from "../../../src/core/units/angle.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";

const made = madeKit();
const lit = litKit();

describe("flaps of what offersFor(kit, refit) offers", () => {
  const springing = (kit: Kit, refit: Refit): boolean[] => offersFor(kit, refit).map(({ springsOpen }) => springsOpen);

  /*
   * By hand: at the head all 40 leaves have flaps of the wall, 20 deep: at 40 mm from the gutter they lie on 6 mm of leaves and
   * count κ × 6 mm, so the book opens to κ × 6 / 40 radians of itself. Half a turn is at κ = 20.94.
   */
  it.each([
    [2, [false]],
    [20.9, [false]],
    [21, [true]],
  ])("with a bulk of %d push the book beyond flat or not: %j", (flapBulk, springs) => {
    expect(springing(made, { height: 400, flapBulk })).toEqual(springs);
  });

  it("say nothing of a book that is opened as far as they push it", () => {
    const shape = { solve: "nothing", pictureLeaves: "fill", height: 40, opening: toRadians(270) } as const;
    const round = madeKit({ fit: { view: "along", shape } });
    // By hand: flaps of 17.5 lie at 5 mm from the gutter and open to κ × 6 / 5; 270° are 4.712 radians, so κ is 3.927.
    expect(springing(round, { leafWidth: 40, flapBulk: 3.9 })[0]).toBe(false);
    expect(springing(round, { leafWidth: 40, flapBulk: 3.95 })[0]).toBe(true);
  });

  it("are told of a smaller light, too", () => {
    // By hand: at most all 60 leaves have flaps of the well, at 40 mm from the gutter, and at least those of the wall, at 80.
    const [least, most] = [(Math.PI * 40) / 9, (Math.PI * 80) / 9];
    expect(springing(lit, { lightDiameter: 70, flapBulk: 0.99 * least })).toEqual([false]);
    expect(springing(lit, { lightDiameter: 70, flapBulk: 1.01 * most })).toEqual([true]);
  });
});
