import { describe, expect, it } from "vitest";
import { type CornerStack, cornerRestingOpening } from "../../../src/core/corner/bulk.ts";
import { foldCorners, foldEmpty, type LeafFold } from "../../../src/core/corner/leaf-fold.ts";
import { fc } from "../../seed.ts";
import { cornerKit, cornerPattern } from "./corner-kit.ts";
import { type FoldLine, layersAt } from "./folded-leaf.ts";
import { SILHOUETTES } from "./silhouettes.ts";

const STACK: CornerStack = {
  leafHeight: 200,
  leafWidth: 130,
  blockThickness: 12,
  caliper: 0.12,
  unfolded: 40,
  flapBulk: 2,
};
const ROOM = { leafHeight: 200, reach: 125, step: 0.5 };

/** The opening forced at a grid of heights and radii: layers of each leaf are counted by mirroring, straight folds by their depth. */
function onGrid(stack: CornerStack, folds: readonly LeafFold[], each: number): number {
  const size = { height: stack.leafHeight, width: stack.leafWidth };
  let greatest = 0;
  for (let at = 200 / 288; at < stack.leafHeight; at += 200 / 144)
    for (let depth = 0.25; depth < stack.leafWidth - 2; depth += 0.5) {
      let layers = stack.unfolded;
      for (const fold of folds) {
        if (fold.kind === "straight") {
          layers += depth >= fold.depth ? each * (1 + (depth <= 2 * fold.depth ? stack.flapBulk : 0)) : 0;
          continue;
        }
        const lines = fold.creases.map(
          ({ corner, from, to }): FoldLine => ({ corner, a: [from.at, 0], b: [to.at, to.depth] }),
        );
        const { body, flaps } = layersAt([at, depth], lines, size);
        layers += each * ((body ? 1 : 0) + flaps * stack.flapBulk);
      }
      greatest = Math.max(greatest, (layers * stack.caliper - stack.blockThickness) / (stack.leafWidth - depth));
    }
  return greatest;
}

describe("the resting opening of folded corners", () => {
  it("is what a grid of layers over all leaves comes to, but for what lies on each other in less than a band of 4 mm", () => {
    const one = fc.oneof(
      fc
        .tuple(fc.integer({ min: 5, max: 90 }), fc.integer({ min: 5, max: 100 }))
        .map(([from, long]) => foldCorners({ from, to: from + long }, null, ROOM)),
      fc.constantFrom("line" as const, "half" as const, "middle" as const).map((empty) => foldEmpty(empty, 20, ROOM)),
    );
    fc.assert(
      fc.property(fc.array(one, { minLength: 4, maxLength: 12 }), (folds) => {
        const leaves = folds.flatMap((fold) => Array.from({ length: 12 }, () => fold));
        const stack = { ...STACK, blockThickness: STACK.caliper * (STACK.unfolded + leaves.length) };
        const wanted = onGrid(stack, folds, 12);
        const found = cornerRestingOpening(stack, leaves);
        expect(found).toBeGreaterThan(wanted * 0.8 - 0.003);
        expect(found).toBeLessThan(wanted * 1.06 + 0.003);
      }),
      { numRuns: 12, endOnFailure: true },
    );
  });

  it.each([SILHOUETTES[1]!, SILHOUETTES[3]!])(
    "is what such a grid comes to in a kit that shows $name, to 3 per cent",
    (one) => {
      const { fit, book, leaves } = cornerPattern(cornerKit({}, one));
      const stack = {
        ...STACK,
        blockThickness: book.blockThickness,
        caliper: book.blockThickness / book.leaves,
        unfolded: 0,
        flapBulk: 1.2,
      };
      const wanted = onGrid(
        stack,
        leaves.map(({ fold }) => fold),
        1,
      );
      expect(leaves).toHaveLength(book.leaves);
      expect(Math.abs(fit.restingOpening / wanted - 1)).toBeLessThan(0.03);
    },
  );

  it("by hand: sixty leaves with corners of 50 mm lie three thick from the mark to 50 mm inward", () => {
    const folds = Array.from({ length: 60 }, () => foldCorners({ from: 50, to: 200 }, null, ROOM));
    // At the radius 80: 40 and 60 bodies and 60 flaps of 2 leaves each are 220 · 0.12 = 26.4 mm, 14.4 more than 12.
    expect(cornerRestingOpening(STACK, folds)).toBeCloseTo(14.4 / 80, 9);
  });

  it("by hand: straight folds of 20 mm begin at 40 mm, as in a kit that is cut", () => {
    const folds = Array.from({ length: 60 }, () => foldEmpty("line", 20, ROOM));
    expect(cornerRestingOpening(STACK, folds)).toBeCloseTo(14.4 / 90, 9);
  });

  it("is 0 where nothing is folded", () => {
    expect(cornerRestingOpening(STACK, [])).toBe(0);
  });
});
