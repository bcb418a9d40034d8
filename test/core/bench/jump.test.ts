import { describe, expect, it } from "vitest";
import { planBench } from "../../../src/core/bench/bench-plan.ts";
import { jumpToLeaf, jumpToPage } from "../../../src/core/bench/jump.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import { valueFrom } from "../findings/made.ts";
import { fixturePlan } from "./made.ts";

const gull = fixturePlan("little-gull", { lostLeaves: [leafNumber(40)] });

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
    const tide = fixturePlan("tide-and-lamp");
    expect(jumpToPage(tide, 95)).toEqual({ leaf: 5 + 47 });
    expect(jumpToPage(tide, 97)).toEqual({ leaf: 5 + 48 + 4 });
  });

  it.each([
    [0, { page: undefined, obstacle: { kind: "no-page", page: 0, last: 218 } }],
    [219, { page: undefined, obstacle: { kind: "no-page", page: 219, last: 218 } }],
    [75, { page: 75, obstacle: { kind: "left-out", leaf: 40 } }],
  ])("says why there is no way to page %d", (page, jump) => {
    expect(jumpToPage(gull, page)).toEqual(jump);
  });
});

describe("jumpToLeaf(plan, leaf)", () => {
  it.each([
    [0, { kind: "no-leaf", leaf: 0, leaves: 112 }],
    [113, { kind: "no-leaf", leaf: 113, leaves: 112 }],
    [2.5, { kind: "no-leaf", leaf: 2.5, leaves: 112 }],
    [40, { kind: "left-out", leaf: 40 }],
  ])("says why there is no way to leaf %d", (leaf, obstacle) => {
    expect(jumpToLeaf(gull, leafNumber(leaf))).toEqual({ page: undefined, obstacle });
  });

  it("says of a leaf that stays unfolded that it does", () => {
    const kit = fixtureKit("little-gull");
    const shape = { solve: "nothing", pictureLeaves: 60, height: 100, opening: 1.2 } as const;
    const few = valueFrom(planBench({ ...kit, fit: { ...kit.fit, shape } }));
    // 8 border leaves, 60 picture leaves, 8 border leaves.
    expect(jumpToLeaf(few, leafNumber(76))).toEqual({ leaf: 76 });
    expect(jumpToLeaf(few, leafNumber(77))).toEqual({
      page: undefined,
      obstacle: { kind: "unfolded", leaf: 77, first: 1, last: 76 },
    });
    const last = { kind: "unfolded", leaf: 112, first: 1, last: 76 };
    expect(jumpToLeaf(few, leafNumber(112))).toEqual({ page: undefined, obstacle: last });
  });
});
