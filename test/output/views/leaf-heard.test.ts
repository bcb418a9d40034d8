import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { leafHeard, markHeard } from "../../../src/output/views/leaf-heard.ts";
import { fixturePlan } from "../../core/bench/fixture-plan.ts";

const MM = { units: "mm", step: 0.5 } as const;

describe("what is heard of a leaf", () => {
  const moon = fixturePlan("harbour-moon");

  it("is its page, its marks with their cuts, its folds and its notch", () => {
    // Source of the figures: the contract's example of this kit, cuts measured from the edge folded at 18 mm.
    const leaf = moon.pattern.leaves.find(({ bookPage, cuts }) => bookPage === 183 && cuts.length === 7)!;
    const [page, marks, first, ...more] = leafHeard(moon, leaf.leaf, MM);
    expect([page, marks, first]).toEqual(["Page 183.", "7 marks from the head, in millimetres.", "40, cut 8."]);
    expect(more).toHaveLength(8);
    expect(more[6]).toBe("Fold back and tuck behind, head to tail: 2, 1, 3, 2, 3, 2, 1, 2.");
    expect(more[7]).toMatch(/^Notch for the light: from 92 to 138, [\d.]+ deep\.$/);
  });

  it("is where a whole leaf is folded", () => {
    expect(leafHeard(moon, leafNumber(3), MM)).toEqual([
      "Leaf 3, front leaf 3 of 4.",
      "Border leaf.",
      "No marks. Fold the whole leaf back at level 2, wall.",
    ]);
  });

  it("is one mark with the folds beside it", () => {
    const leaf = moon.pattern.leaves.find(({ bookPage }) => bookPage === 183)!;
    expect(markHeard(moon, leaf.leaf, 1, MM)).toEqual([
      "Mark 2 of 7: 56.5, cut 24.",
      "Above it fold back at level 1, below it at level 3.",
    ]);
  });

  it("has no fraction with a stroke and no sign in inches", () => {
    const leaf = moon.pattern.leaves.find(({ bookPage }) => bookPage === 183)!;
    const said = leafHeard(moon, leaf.leaf, { units: "in", step: 25.4 / 32 }).join(" ");
    // By hand: 40 mm are 50.4 parts of 32, 8 mm are 10.1.
    expect(said).toContain("7 marks from the head, in inches. 1 and 9 sixteenths, cut 5 sixteenths.");
    expect(said).not.toMatch(/[/›–″]/);
  });
});
