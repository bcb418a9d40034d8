import { describe, expect, it } from "vitest";
import { type Calibration, calibrate } from "../../../src/core/bench/calibration.ts";
import { CUT_WAY } from "../../../src/core/bench/cut-way.ts";
import type { Measured } from "../../../src/core/bench/progress.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { LIGHT, litKit, madeKit, WINDOW } from "../kit/made-kit.ts";
import { calibrateByHand } from "./by-hand.ts";

const cut = (kit: Kit) => ({ kit, way: CUT_WAY });

function calibrated(kit: Kit, measured: Measured): Calibration {
  const result = calibrate(cut(kit), measured);
  if ("bounds" in result) throw new Error("the measurement was refused");
  return result.calibration;
}

const KITS: readonly (readonly [string, Kit])[] = [
  ["single folds", madeKit()],
  ["stepped folds, a rounded spine", litKit({ insert: undefined, fit: { foldStyle: "stepped", spine: "rounded" } })],
  ["another reading direction", madeKit({ book: { direction: "rtl" }, fit: { borderLeaves: [8, 2] } })],
];

describe("calibrate(plan, measured)", () => {
  it.each(KITS.flatMap(([name, kit]) => [1.6, 3, 5.5, 12].map((share) => [name, share, kit] as const)))(
    "%s, a first batch of %d times its flat thickness: bulk, resting opening and widths as worked by hand",
    (_, share, kit) => {
      const thickness = 10 * 0.15 * share;
      const result = calibrated(kit, { leaves: 10, thickness });
      const hand = calibrateByHand(kit, 10, thickness);
      expect(hand.kappa).toBeCloseTo(share - 1, 9);
      expect(result.flapBulk).toBeCloseTo(hand.kappa, 9);
      expect(result.restingOpening).toBeCloseTo(hand.rest, 9);
      expect(result.opening).toBeCloseTo(hand.wanted, 9);
      expect(result.holdWidth).toBeCloseTo(hand.hold, 9);
      expect(result.restingWidth).toBeCloseTo(hand.resting, 9);
      expect(result.holds).toBe(hand.rest <= hand.wanted);
    },
  );

  it("does not ask whether light and window fit", () => {
    const plain = calibrated(madeKit(), { leaves: 10, thickness: 3 });
    const lit = madeKit({ light: { ...LIGHT, level: 1, diameter: 150 }, insert: { ...WINDOW, lip: 30 } });
    expect(calibrated(lit, { leaves: 10, thickness: 3 })).toEqual(plain);
  });

  it("is a broken program's fault where the kit does not fit its book", () => {
    expect(() => calibrate(cut(madeKit({ book: { leafWidth: 30 } })), { leaves: 10, thickness: 3 })).toThrow(
      "flap-in-gutter",
    );
  });

  // By hand: 10 leaves of 0.15 mm are 1.5 mm flat; twelve leaf thicknesses for a flap are the most, 13 × 1.5 mm.
  it.each([
    [1.4, true],
    [1.5, false],
    [19.5, false],
    [19.6, true],
    [-3, true],
    [Number.NaN, true],
  ])("refuses %d mm for 10 leaves: %s, and says between what it may be", (thickness, isRefused) => {
    const result = calibrate(cut(madeKit()), { leaves: 10, thickness });
    expect("bounds" in result).toBe(isRefused);
    if ("bounds" in result) expect(result.bounds).toEqual({ leaves: 10, least: 1.5, most: expect.closeTo(19.5, 9) });
  });

  it("gives the least thickness to the tenth above it", () => {
    // By hand: 7 × 0.15 is 1.05.
    const result = calibrate(cut(madeKit()), { leaves: 7, thickness: 0.5 });
    expect("bounds" in result && result.bounds.least).toBe(1.1);
  });
});
