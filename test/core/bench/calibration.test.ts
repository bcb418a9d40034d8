import { describe, expect, it } from "vitest";
import { type Calibration, calibrate, holdingOf } from "../../../src/core/bench/calibration.ts";
import { benchKit } from "../../../src/core/bench/fit-key.ts";
import type { Measured } from "../../../src/core/bench/progress.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { FIXTURE_KITS, fixtureKit } from "../../input/kit/kit-folders.ts";
import { patternOf } from "../pattern/computed.ts";
import { calibrateByHand } from "./by-hand.ts";

function calibrated(kit: Kit, measured: Measured): Calibration {
  const result = calibrate(kit, measured);
  if ("bounds" in result) throw new Error("the measurement was refused");
  return result.calibration;
}

describe("calibrate(kit, measured)", () => {
  it.each(FIXTURE_KITS.flatMap((slug) => [1.6, 3, 5.5].map((share) => [slug, share] as const)))(
    "%s, a first batch of %d times its flat thickness: bulk, resting opening and widths as worked by hand",
    (slug, share) => {
      const kit = fixtureKit(slug);
      const thickness = Math.round(((20 * kit.book.blockThickness) / kit.book.leaves) * share * 10) / 10;
      const result = calibrated(benchKit(kit, {}, kit.units), { leaves: 20, thickness });
      const hand = calibrateByHand(slug, 20, thickness);
      expect(result.flapBulk).toBeCloseTo(hand.kappa, 9);
      expect(result.restingOpening).toBeCloseTo(hand.rest, 9);
      expect(result.opening).toBeCloseTo(hand.wanted, 9);
      expect(result.holdWidth).toBeCloseTo(hand.hold, 9);
      expect(result.restingWidth).toBeCloseTo(hand.resting, 9);
      expect(result.holds).toBe(hand.rest <= hand.wanted);
    },
  );

  it("gives the width that the page gives, and a wider one where the flaps push the book open", () => {
    const kit = fixtureKit("harbour-moon");
    const { fit } = patternOf(kit);
    const easy = calibrated(kit, { leaves: 20, thickness: 9.5 });
    const stiff = calibrated(kit, { leaves: 20, thickness: 14 });
    expect([easy.holdWidth, stiff.holdWidth]).toEqual([fit.holdWidth, fit.holdWidth]);
    expect([easy.holds, stiff.holds]).toEqual([true, false]);
    expect(easy.restingWidth).toBe(fit.holdWidth);
    expect(stiff.restingWidth).toBeGreaterThan(fit.holdWidth + 5);
    // The deeper front tips stand elsewhere: the two widths must not be mixed up.
    expect(Math.abs(fit.tipWidth - fit.holdWidth)).toBeGreaterThan(1);
    expect(holdingOf(patternOf(kit)).holdWidth).toBe(fit.holdWidth);
  });

  // Twelve leaf thicknesses for a flap are the most: 13 times the flat leaves.
  it.each([1, 31, 95])("refuses %d mm for 20 leaves, and says between what it may be", (thickness) => {
    const kit = fixtureKit("harbour-moon");
    const flat = (20 * kit.book.blockThickness) / kit.book.leaves;
    const result = calibrate(kit, { leaves: 20, thickness });
    if (!("bounds" in result)) throw new Error("the measurement was taken");
    expect(result.bounds).toEqual({ leaves: 20, least: Math.ceil(flat * 10) / 10, most: expect.closeTo(13 * flat, 9) });
  });
});
