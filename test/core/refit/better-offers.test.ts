import { describe, expect, it } from "vitest";
import { asCutKit } from "../../../src/core/kit/cut-kit.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitKit } from "../../../src/core/pattern/fit-kit.ts";
import { betterOffers } from "../../../src/core/refit/better-offers.ts";
import { leastMargins } from "../../../src/core/refit/margins.ts";
import { judgeFit } from "../../../src/core/refit/quality.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { litKit, madeKit, WINDOW } from "../kit/made-kit.ts";

function judged(kit: Kit, refit: Refit) {
  const result = fitKit(asCutKit(refitKit(kit, refit)));
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return judgeFit(result, leastMargins(kit));
}

describe("betterOffers(kit, refit, reasons)", () => {
  it.each<[string, Kit, Refit, readonly string[]]>([
    // Ten picture leaves show 40 mm: steps of more than 3 mm.
    [
      "more leaves or a lower picture where it comes out in steps",
      madeKit(),
      { borderLeaves: [15, 15] },
      ["borders", "height"],
    ],
    // By hand: flaps of 20 mm lie on 6 mm of leaves, 40 mm from the gutter, and open the book to κ × 6 / 40.
    ["shallower levels where flaps push it open", madeKit(), { flapBulk: 25 }, ["depths"]],
    // The hole is 0.9 × 80 − 20 mm.
    [
      "a narrower light, or a larger hole, where the light does not go through it",
      litKit({ insert: { ...WINDOW, lip: 10 } }),
      { lightDiameter: 53 },
      ["light-width", "height"],
    ],
  ])("offers %s", (_, kit, refit, kinds) => {
    const { kind, reasons } = judged(kit, refit);
    expect(kind).toBe("poor");
    const offers = betterOffers(kit, refit, reasons);
    const offered = offers.map(({ says }) => says[0]!.kind as string);
    expect(kinds.filter((one) => offered.includes(one))).toEqual(kinds);
    expect(offers.length).toBeLessThan(4);
    for (const offer of offers) expect(judged(kit, offer.refit).kind).toBe(offer.quality);
    expect(offers.map(({ quality }) => quality)).not.toContain("poor");
  });

  it("offers nothing where nothing is wrong", () => {
    expect(betterOffers(madeKit(), {}, [])).toEqual([]);
  });
});
