import { describe, expect, it } from "vitest";
import { judge } from "../../../src/core/finder/verdict.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { cornerCounts } from "../../../src/core/plan/corner-effort.ts";
import { effortOf } from "../../../src/core/plan/effort.ts";
import { makeAny } from "../../../src/core/refit/any-making.ts";
import { betterOffers } from "../../../src/core/refit/better-offers.ts";
import { leastMargins } from "../../../src/core/refit/margins.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { judgeFit } from "../../../src/core/refit/quality.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { cornerKit } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";
import { litKit, madeKit, SQUARE } from "../kit/made-kit.ts";

const says = (kit: Kit, refit: Refit) => offersFor(kit, refit, makeAny).flatMap((offer) => offer.says);

describe("offers for a kit that is folded by corners", () => {
  const tall: readonly [string, Kit, Refit][] = [
    ["a leaf too short", cornerKit({ fit: { head: undefined } }), { leafHeight: 70 }],
    ["a picture too tall", cornerKit(), { height: 240 }],
    ["a border's fold in the gutter", cornerKit(), { leafWidth: 44 }],
  ];

  it.each(tall)("%s: each fits, takes the minutes that it says, and cuts nothing", (_, kit, refit) => {
    expect(fitAny(refitKit(kit, refit)).fits).toBe(false);
    const offers = offersFor(kit, refit, makeAny);
    expect(offers.length).toBeGreaterThan(0);
    for (const offer of offers) {
      const result = fitAny(refitKit(kit, offer.refit));
      if (!result.fits || !result.pattern.corner) throw new Error("is not folded by corners");
      expect(offer.minutes).toBeCloseTo(effortOf(cornerCounts(result.pattern), kit.rates).minutes, 9);
    }
  });

  it("asks for cuts only where there is no outline to fold", () => {
    const levels = [10, 20].map((depth, i) => ({ name: `${i}`, depth, line: undefined, background: i === 0 }));
    const shapes = SQUARE.shapes.map((shape) => ({ ...shape, level: 2 }));
    const kit = madeKit({ levels, picture: { ...SQUARE, background: 1, shapes } });
    expect(says(kit, { foldStyle: "corner" })).toContainEqual({ kind: "folds", foldStyle: "single" });
    for (const [, one, refit] of tall) expect(says(one, refit).map(({ kind }) => kind)).not.toContain("folds");
  });

  it("helps where its corners push the book open beyond flat", () => {
    const kit = cornerKit({ fit: { flapBulk: 5 } }, SILHOUETTES[2]);
    const result = fitAny(kit);
    if (!result.fits) throw new Error("does not fit");
    const judgement = judgeFit(result, leastMargins(kit));
    expect(judgement.kind).toBe("poor");
    const offers = betterOffers(kit, {}, judgement.reasons, makeAny);
    expect(offers.length).toBeGreaterThan(0);
    for (const { refit } of offers) {
      const better = fitAny(refitKit(kit, refit));
      if (!better.fits) throw new Error("does not fit");
      expect(judgeFit(better, leastMargins(kit)).kind).not.toBe("poor");
    }
  });
});

describe("judge(kit, book, makeAny)", () => {
  it("judges a kit that is changed to corners without its light and window", () => {
    const verdict = judge(litKit({ fit: { head: 40 } }), { foldStyle: "corner" }, makeAny);
    expect(["fits", "check"]).toContain(verdict.kind);
  });

  it("judges a kit that is cut as without it", () => {
    for (const kit of [madeKit(), litKit()]) expect(judge(kit, {}, makeAny)).toEqual(judge(kit, {}));
  });
});
