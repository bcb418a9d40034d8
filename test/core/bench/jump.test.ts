import { describe, expect, it } from "vitest";
import { jumpToLeaf, jumpToPage } from "../../../src/core/bench/jump.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madePlan } from "./made.ts";

/** Page 1 stands on leaf 3, no plates, so that leaf L carries pages 2(L − 3) + 1 and one more; leaf 20 is lost. */
const plain = madePlan(madeKit({ book: { pageOneLeaf: leafNumber(3), lastPage: 74 } }), {
  lostLeaves: [leafNumber(20)],
});

describe("jumpToPage(plan, page)", () => {
  it("leads from every printed page, front and back, to the leaf that carries it", () => {
    for (const leaf of plain.stops.filter((stop) => stop >= 3 && stop <= 39)) {
      const recto = 2 * (leaf - 3) + 1;
      expect(jumpToPage(plain, recto)).toEqual({ leaf });
      expect(jumpToPage(plain, recto + 1)).toEqual({ leaf });
    }
  });

  it("counts plates: four leaves after page 20 stand before page 21", () => {
    const plates = [{ afterPage: 20, leaves: 4 }];
    const plated = madePlan(madeKit({ book: { pageOneLeaf: leafNumber(3), lastPage: 66, plates } }));
    expect(jumpToPage(plated, 19)).toEqual({ leaf: 12 });
    expect(jumpToPage(plated, 21)).toEqual({ leaf: 17 });
  });

  it.each([
    [0, { page: undefined, obstacle: { kind: "no-page", page: 0, last: 74 } }],
    [75, { page: undefined, obstacle: { kind: "no-page", page: 75, last: 74 } }],
    [35, { page: 35, obstacle: { kind: "left-out", leaf: 20 } }],
  ])("says why there is no way to page %d", (page, jump) => {
    expect(jumpToPage(plain, page)).toEqual(jump);
  });
});

describe("jumpToLeaf(plan, leaf)", () => {
  it.each([
    [0, { kind: "no-leaf", leaf: 0, leaves: 40 }],
    [41, { kind: "no-leaf", leaf: 41, leaves: 40 }],
    [2.5, { kind: "no-leaf", leaf: 2.5, leaves: 40 }],
    [20, { kind: "left-out", leaf: 20 }],
  ])("says why there is no way to leaf %d", (leaf, obstacle) => {
    expect(jumpToLeaf(plain, leafNumber(leaf))).toEqual({ page: undefined, obstacle });
  });

  it("says of the first leaf that it is left out", () => {
    const plan = madePlan(madeKit({ fit: { borderLeaves: [0, 4] } }), { lostLeaves: [leafNumber(1)] });
    expect(jumpToLeaf(plan, leafNumber(1))).toEqual({ page: undefined, obstacle: { kind: "left-out", leaf: 1 } });
  });

  it("says of a leaf that stays unfolded that it does", () => {
    const shape = { solve: "nothing", pictureLeaves: 20, height: 40, opening: 1.2 } as const;
    const few = madePlan(madeKit({ fit: { borderLeaves: [0, 4], shape } }));
    // 20 picture leaves and 4 border leaves.
    expect(jumpToLeaf(few, leafNumber(1))).toEqual({ leaf: 1 });
    expect(jumpToLeaf(few, leafNumber(24))).toEqual({ leaf: 24 });
    for (const leaf of [25, 40])
      expect(jumpToLeaf(few, leafNumber(leaf))).toEqual({
        page: undefined,
        obstacle: { kind: "unfolded", leaf, first: 1, last: 24 },
      });
  });
});
