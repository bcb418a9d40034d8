import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { judge } from "../../../src/core/finder/verdict.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { FIXTURE_KITS, fixtureFrontMatter, fixtureKit } from "../../input/kit/kit-folders.ts";

import { patternOf } from "../pattern/computed.ts";

const KITS = new Map(FIXTURE_KITS.map((slug) => [slug, fixtureKit(slug)]));
const gull = KITS.get("little-gull")!;

describe("judge(kit, book)", () => {
  it.each(FIXTURE_KITS)("%s fits its own book as it is", (slug) => {
    const kit = KITS.get(slug)!;
    const { leafHeight, leafWidth, blockThickness, leaves, pageOneLeaf, lastPage, plates } = kit.book;
    const own = { leafHeight, leafWidth, blockThickness, leaves, pageOneLeaf, lastPage, plates };
    expect(judge(kit, own).kind).toMatch(/^(fits|check)$/);
  });

  it("offers for a low book only changes with which the whole kit is made", () => {
    const verdict = judge(gull, { leafHeight: 110 });
    expect(verdict.kind).toBe("change");
    if (verdict.kind !== "change") return;
    for (const { refit } of verdict.offers) {
      expect(refit.leafHeight).toBe(110);
      patternOf(refitKit(gull, refit));
    }
  });

  // Single folds reach twice their depth: a leaf narrower than that and the clearance at the gutter carries no flap.
  it("gives the failure of a narrow book that carries nothing", () => {
    const moon = KITS.get("harbour-moon")!;
    expect(fixtureFrontMatter("harbour-moon").levels).toHaveLength(3);
    const verdict = judge(moon, { leafHeight: 120, leafWidth: 34, leaves: 40, blockThickness: 6 });
    expect(verdict.kind).toBe("no");
    if (verdict.kind === "no") expect(verdict.failure.kind).toMatch(/^(flap-in-gutter|too-few-leaves)$/);
  });

  it("never says that a book fits which may have been measured wrong", () => {
    // 0.02 mm a leaf: pages were counted as leaves.
    const thin = judge(gull, { leaves: 200, blockThickness: 4, pageOneLeaf: leafNumber(1), lastPage: 400 });
    expect(thin.kind).not.toBe("fits");
    if (thin.kind === "check") expect(thin.doubts.map((doubt) => doubt.kind)).toContain("caliper");
  });

  it("states less work for fewer leaves", () => {
    const many = judge(gull, { leaves: 130, blockThickness: 14 });
    const few = judge(gull, { leaves: 100, blockThickness: 11 });
    if (!("minutes" in many && "minutes" in few)) throw new Error("both books should fit");
    expect(few.minutes).toBeLessThan(many.minutes);
  });
});
