import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readKit } from "../../src/kit/read-kit.ts";
import { computePattern, tryFit } from "../../src/pattern/compute.ts";
import { offersFor } from "../../src/refit/offers.ts";
import { type Refit, refitKit } from "../../src/refit/refit.ts";

const ROOT = join(import.meta.dirname, "../..");
const kit = readKit(join(ROOT, "content/kits/little-gull"), ROOT).kit;

const UNFIT: readonly (readonly [name: string, refit: Refit])[] = [
  ["a low book", { leafHeight: 110 }],
  ["a thin book", { leaves: 14, blockThickness: 1.6, pageOneLeaf: 1, lastPage: 28 }],
  ["a narrow book", { leafWidth: 45 }],
  ["a picture too high", { height: 400 }],
];

describe("offersFor(kit, refit)", () => {
  it.each(UNFIT)("finds for %s only changes that fit, and at least one", (_, refit) => {
    expect(tryFit(refitKit(kit, refit))).toBeDefined();
    const offers = offersFor(kit, refit);
    expect(offers.length).toBeGreaterThan(0);
    for (const offer of offers) expect(() => computePattern(refitKit(kit, offer.refit))).not.toThrow();
  });

  it("offers the highest picture that fits, to the millimetre", () => {
    const [offer] = offersFor(kit, { leafHeight: 110 });
    expect(offer!.refit.height).toBe(110);
  });

  it("offers nothing where nothing of a kind helps", () => {
    expect(
      offersFor(kit, { leaves: 4, blockThickness: 200, pageOneLeaf: 1, lastPage: 8, leafHeight: 41 }).every(
        (offer) => tryFit(refitKit(kit, offer.refit)) === undefined,
      ),
    ).toBe(true);
  });
});
