import { describe, expect, it } from "vitest";
import { pressPlace } from "../../../src/core/bench/press-place.ts";
import { flapsOf, type LeafFold, lyingAt } from "../../../src/core/corner/leaf-fold.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";

describe("pressPlace(pattern, count)", () => {
  it("by hand: leaves folded over the card are pressed on their strip, from 20 to 40 mm", () => {
    // The square begins behind the first 20 leaves of the picture.
    const pattern = cornerPattern(cornerKit());
    expect(pattern.leaves.slice(4, 24).every(({ fold }) => fold.kind === "straight")).toBe(true);
    expect(pressPlace(pattern, 20)).toMatchObject({ flaps: 20, depth: 30 });
  });

  it("by hand: with both corners folded to the middle of the leaf, at 100 mm, on one of them", () => {
    const pattern = cornerPattern(cornerKit({ fit: { corner: { levels: [1], empty: "middle", dropped: [] } } }));
    const place = pressPlace(pattern, 10)!;
    expect(place.flaps).toBe(10);
    // A corner that was at the head lies between its crease and the mark: nearer to the head than 100, farther in than the rest.
    expect(place.at).toBeLessThan(100);
    expect(place.depth).toBeGreaterThan(100 - place.at);
    expect(place.depth).toBeLessThanOrEqual(100);
  });

  it.each(SILHOUETTES)("finds $name a place where all leaves lie, and none with more corners", (silhouette) => {
    const pattern = cornerPattern(cornerKit({}, silhouette));
    const count = 30;
    const folds = pattern.leaves.slice(4, 4 + count).map(({ fold }) => fold);
    const place = pressPlace(pattern, count)!;
    expect(lie(folds, place)).toBe(place.flaps);
    for (let at = 5; at < 200; at += 15)
      for (let depth = 5; depth < 130; depth += 15) expect(lie(folds, { at, depth })).toBeLessThanOrEqual(place.flaps);
  });
});

/** How many leaves have a flap at a place; none where one of them does not reach there. */
function lie(folds: readonly LeafFold[], { at, depth }: { readonly at: number; readonly depth: number }): number {
  if (folds.some((fold) => !reaches(fold, at, depth))) return 0;
  return folds.filter((fold) =>
    flapsOf(fold).some((flap) => {
      const lying = lyingAt(flap, at);
      return lying !== undefined && lying[0] <= depth && depth <= lying[1];
    }),
  ).length;
}

/** Whether a folded leaf's body is there: on the gutter's side of its creases, by the sides of a line. */
function reaches(fold: LeafFold, at: number, depth: number): boolean {
  if (fold.kind === "straight") return depth >= fold.depth;
  return fold.creases.every(({ from, to }) => {
    const side = (to.at - from.at) * depth - (at - from.at) * to.depth;
    return to.at < from.at ? side <= 1e-9 : side >= -1e-9;
  });
}
