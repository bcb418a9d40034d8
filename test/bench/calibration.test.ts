import { describe, expect, it } from "vitest";
import { calibrate, holdingOf, MeasureError } from "../../src/bench/calibration.ts";
import { benchKit } from "../../src/bench/fit-key.ts";
import { computePattern } from "../../src/pattern/compute.ts";
import { DEMO_KITS } from "../kit/kit-folders.ts";
import { tip } from "../oracle/fan.ts";
import { demoKit } from "./made.ts";

/**
 * The calibration worked by hand from the project's own model of the fan: the batch is m·t·(1 + κ) thick; at radius r and
 * height u the stack is t for each body that reaches r and κ·t for each flap over W − 2d … W − d; the book rests at
 * max (S − T)/r. Sampled at every half millimetre of height, at the flaps' inner ends.
 */
function byHand(slug: string, leaves: number, thickness: number) {
  const kit = demoKit(slug);
  const { book } = kit;
  const pattern = computePattern({ ...kit, insert: undefined });
  const t = book.blockThickness / book.leaves;
  const kappa = thickness / (leaves * t) - 1;
  const depths = kit.levels.map((level) => level.depth);
  let rest = 0;
  for (let u = 0.25; u < book.leafHeight; u += 0.5) {
    const folded = pattern.leaves.map(
      (leaf) => depths[leaf.spans.find((span) => u >= span.from && u < span.to)!.level - 1]!,
    );
    for (const r of depths.map((depth) => book.leafWidth - 2 * depth)) {
      const bodies = book.leaves - folded.length + folded.filter((depth) => r <= book.leafWidth - depth).length;
      const flaps = folded.filter((d) => r >= book.leafWidth - 2 * d - 1e-9 && r <= book.leafWidth - d).length;
      rest = Math.max(rest, (t * (bodies + kappa * flaps) - book.blockThickness) / r);
    }
  }
  const wanted = pattern.fit.opening;
  const headDepth = (leaf: number) => depths[pattern.leaves.find((one) => one.leaf === leaf)!.spans[0]!.level - 1]!;
  const { firstLeaf, lastLeaf } = pattern.fit;
  const widthAt = (opening: number) => {
    const fan = { ...book, opening, spine: pattern.fit.spine };
    const [a, b] = [tip(fan, firstLeaf, headDepth(firstLeaf)), tip(fan, lastLeaf, headDepth(lastLeaf))];
    return Math.hypot(a.x - b.x, a.z - b.z);
  };
  return { kappa, rest, wanted, hold: widthAt(wanted), resting: widthAt(Math.max(rest, wanted)) };
}

describe("calibrate(kit, measured)", () => {
  it.each(DEMO_KITS.flatMap((slug) => [1.6, 3, 5.5].map((share) => [slug, share] as const)))(
    "%s, a first batch of %d times its flat thickness: bulk, resting opening and widths as worked by hand",
    (slug, share) => {
      const kit = demoKit(slug);
      const thickness = Math.round(((20 * kit.book.blockThickness) / kit.book.leaves) * share * 10) / 10;
      const result = calibrate(benchKit(kit, {}, kit.units), { leaves: 20, thickness });
      const hand = byHand(slug, 20, thickness);
      expect(result.flapBulk).toBeCloseTo(hand.kappa, 9);
      expect(result.restingOpening).toBeCloseTo(hand.rest, 9);
      expect(result.opening).toBeCloseTo(hand.wanted, 9);
      expect(result.holdWidth).toBeCloseTo(hand.hold, 9);
      expect(result.restingWidth).toBeCloseTo(hand.resting, 9);
      expect(result.holds).toBe(hand.rest <= hand.wanted);
    },
  );

  it("gives the width that the page gives, and a wider one where the flaps push the book open", () => {
    const kit = demoKit("harbour-moon");
    const { fit } = computePattern(kit);
    const easy = calibrate(kit, { leaves: 20, thickness: 9.5 });
    const stiff = calibrate(kit, { leaves: 20, thickness: 14 });
    expect([easy.holdWidth, stiff.holdWidth]).toEqual([fit.edgeWidth, fit.edgeWidth]);
    expect([easy.holds, stiff.holds]).toEqual([true, false]);
    expect(easy.restingWidth).toBe(fit.edgeWidth);
    expect(stiff.restingWidth).toBeGreaterThan(fit.edgeWidth + 5);
    // The deeper front tips stand elsewhere: the two widths must not be mixed up.
    expect(Math.abs(fit.holdWidth - fit.edgeWidth)).toBeGreaterThan(1);
    expect(holdingOf(computePattern(kit)).holdWidth).toBe(fit.edgeWidth);
  });

  it.each([
    ["mm", 1, /^2\.4.mm to 30\.6.mm: 20 leaves of this book are 2\.4.mm before they are folded$/],
    ["mm", 31, /^2\.4.mm to/],
    ["in", 95, /^3\/32.in to 1 7\/32.in/],
  ] as const)("in %s, says of %d mm what is allowed", (units, thickness, message) => {
    const kit = { ...demoKit("harbour-moon"), units };
    expect(() => calibrate(kit, { leaves: 20, thickness })).toThrow(MeasureError);
    expect(() => calibrate(kit, { leaves: 20, thickness })).toThrow(message);
  });
});
