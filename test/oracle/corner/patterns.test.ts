import { describe, expect, it } from "vitest";
import type { KitChanges } from "../../core/kit/made-kit.ts";
import { displayedWidth, type Fan, readingPositions, tip } from "../fan.ts";
import { cornerKit, cornerPattern } from "./corner-kit.ts";
import { SILHOUETTES, type Silhouette } from "./silhouettes.ts";

/** Kits whose strips are worked out beside the program: along the unfolded fore-edges, so at the depth 0. */
const WAYS: readonly [string, KitChanges][] = [
  ["left to right", {}],
  ["right to left, rounded spine", { book: { direction: "rtl" }, fit: { spine: "rounded" } }],
  ["walking along", { fit: { view: "along" } }],
  ["inches, whole millimetres", { units: "in", fit: { markStep: 25.4 / 16 } }],
  ["more border at the end", { fit: { borderLeaves: [2, 30], head: 20 } }],
  ["12 picture leaves", { fit: { borderLeaves: [50, 58], shape: STATED(60) } }],
  ["40 leaves", { book: { leaves: 40, lastPage: 80, blockThickness: 6 } }],
  ["200 leaves", { book: { leaves: 200, lastPage: 400, blockThickness: 24 } }],
  ["600 leaves", { book: { leaves: 600, lastPage: 1200, blockThickness: 60 }, fit: { borderLeaves: [90, 90] } }],
  ["two picture leaves", { fit: { borderLeaves: [59, 59], shape: STATED(60) } }],
];

function STATED(height: number) {
  return { solve: "nothing", pictureLeaves: "fill", height, opening: 1 } as const;
}

/** The strips of a leaf in mm from the head, exactly as they are drawn. */
function stripsOn(silhouette: Silhouette, x: number, { head, height }: { head: number; height: number }) {
  return silhouette.strips(x).map(([from, to]) => [head + (from / 100) * height, head + (to / 100) * height] as const);
}

describe.each(WAYS)("a kit folded by corners, %s", (_, changes) => {
  it.each(SILHOUETTES.map((one) => [one.name, one] as const))(
    "shows of %s on each leaf a strip that lies there",
    (__, one) => {
      const kit = cornerKit(changes, one);
      const pattern = cornerPattern(kit);
      const { fit, book } = pattern;
      const fan: Fan = { ...book, opening: fit.opening, spine: fit.spine };
      const view = kit.fit.view;
      const shownWidth = displayedWidth(fan, fit.firstLeaf, fit.lastLeaf, 0, view);
      // The picture is as wide as it is high, unless its opening is stated.
      if (kit.fit.shape.solve === "opening") expect(shownWidth).toBeCloseTo(fit.height, 6);
      expect(fit.width).toBeCloseTo(shownWidth, 6);
      const places = readingPositions(fan, fit.firstLeaf, fit.lastLeaf, 0, view);
      const sorted = [...places].sort((a, b) => a - b);
      const start = sorted[0]! - (sorted[1]! - sorted[0]!) / 2;
      let [shown, empty] = [0, 0];
      for (const leaf of pattern.leaves) {
        expect(leaf.x).toBeCloseTo(tip(fan, leaf.leaf, 0).x, 9);
        if (leaf.patternPage === null) {
          expect(leaf.fold).toEqual({ kind: "straight", depth: 20 });
          continue;
        }
        expect(leaf.patternPage).toBe(2 * (leaf.leaf - fit.firstLeaf) + 1);
        const x = ((places[leaf.leaf - fit.firstLeaf]! - start) / shownWidth) * 100;
        const strips = stripsOn(one, x, fit);
        // Marks move by half a step; the outlines are polygons, up to 0.01 mm inside of the circles.
        const { markStep: step } = fit;
        const least = 3 + step;
        if (leaf.fold.kind !== "corners") {
          empty += 1;
          expect(strips.every(([from, to]) => to - from < least)).toBe(true);
          continue;
        }
        shown += 1;
        const { from, to } = leaf.fold.shown;
        for (const mark of [from, to]) expect(Math.abs(mark / step - Math.round(mark / step))).toBeLessThan(1e-3);
        expect(to - from).toBeGreaterThan(3 - 1e-6);
        if (strips.some((strip, i) => i > 0 && strip[0] - strips[i - 1]![1] < least)) continue;
        const own = strips.filter(
          (strip) => Math.abs(strip[0] - from) < 0.51 * step + 0.3 && Math.abs(strip[1] - to) < 0.51 * step + 0.3,
        );
        expect(own).toHaveLength(1);
        if (strips.some(([a, b]) => b - a < least)) continue;
        const turn = strips.length > 1 ? { which: strips.indexOf(own[0]!) + 1, of: strips.length } : null;
        expect(leaf.fold.turn).toEqual(turn);
      }
      expect(shown).toBeGreaterThan(0);
      expect(shown + empty).toBe(fit.lastLeaf - fit.firstLeaf + 1);
    },
  );
});
