import { describe, expect, it } from "vitest";
import { planBench } from "../../../src/core/bench/bench-plan.ts";
import { jumpToLeaf, jumpToPage, leafInWords } from "../../../src/core/bench/jump.ts";
import { demoKit, demoPlan } from "./made.ts";

const gull = demoPlan("little-gull", { lostLeaves: [40] });

describe("jumpToPage(plan, page)", () => {
  it("leads from every printed page, front and back, to the leaf that carries it", () => {
    // Little Gull: page 1 stands on leaf 3, no plates, so that leaf L carries pages 2(L − 3) + 1 and one more.
    for (const leaf of gull.stops.filter((stop) => stop >= 3 && stop <= 111)) {
      const recto = 2 * (leaf - 3) + 1;
      expect(jumpToPage(gull, recto)).toEqual({ leaf });
      expect(jumpToPage(gull, recto + 1)).toEqual({ leaf });
    }
  });

  it("counts plates: four leaves after page 96 stand before page 97", () => {
    const tide = demoPlan("tide-and-lamp");
    expect(jumpToPage(tide, 95)).toEqual({ leaf: 5 + 47 });
    expect(jumpToPage(tide, 97)).toEqual({ leaf: 5 + 48 + 4 });
    expect(leafInWords(tide, 53)).toMatch(/plate.*\(leaf 53\)/);
  });

  it.each([
    [0, "Page 0 is not in this book: pages run from 1 to 218."],
    [219, "Page 219 is not in this book: pages run from 1 to 218."],
    [75, "Page 75 is on leaf 40. Leaf 40 is left out."],
  ])("says why there is no way to page %d", (page, problem) => {
    expect(jumpToPage(gull, page)).toEqual({ problem });
  });
});

describe("jumpToLeaf(plan, leaf)", () => {
  it.each([
    [0, "Leaf 0 is not in this book: it has 112 leaves."],
    [113, "Leaf 113 is not in this book: it has 112 leaves."],
    [2.5, "Leaf 2.5 is not in this book: it has 112 leaves."],
    [40, "Leaf 40 is left out."],
  ])("says why there is no way to leaf %d", (leaf, problem) => {
    expect(jumpToLeaf(gull, leaf)).toEqual({ problem });
  });

  it("says of a leaf that stays unfolded that it does", () => {
    const kit = demoKit("little-gull");
    const few = planBench({ ...kit, fit: { ...kit.fit, pictureLeaves: 60, height: 100, opening: 1.2 } });
    // 8 border leaves, 60 picture leaves, 8 border leaves.
    expect(jumpToLeaf(few, 76)).toEqual({ leaf: 76 });
    expect(jumpToLeaf(few, 77)).toEqual({ problem: "Leaf 77 stays unfolded: folded leaves run from 1 to 76." });
  });

  it("names a leaf by its page, or says which unnumbered one it is", () => {
    expect(leafInWords(gull, 39)).toBe("p. 73 (leaf 39)");
    expect(leafInWords(gull, 2)).toBe("front leaf 2 of 2 (leaf 2)");
  });
});
