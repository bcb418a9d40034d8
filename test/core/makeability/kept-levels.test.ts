import { describe, expect, it } from "vitest";
import { fc } from "../../seed.ts";
import { kitOf } from "../pattern/made.ts";
import { assessed, seenBy } from "./assessed.ts";
import { EDGE, nineLeaves } from "./nine-leaves.ts";

/** Areas are sums of columns 0.42 mm wide and 100 mm high: an end may be off by one of them. */
const COLUMN = 42;

describe("keptLevels(kit, looked)", () => {
  /*
   * One band, 40 to 55 mm right of the middle, so that only the leaf at 20° stands proud. By hand: of the ground, a ray at x
   * - below 18.048 (midway between the deep tips at 10° and 20°) meets ground;
   * - from there to 36.097 (midway between the front tips at 10° and 20°) meets the side of the leaf at 20°;
   * - from there to the band meets the folded edge of that leaf, a little too wide;
   * - beyond 49.993 (the deep tip at 40° and half a pitch) there is no folded edge of the ground.
   */
  const { levels } = seenBy(nineLeaves([[40, 55]]), "far");
  const [band, ground] = levels;

  it("keeps all of the front level", () => {
    expect(band!.wanted).toBeCloseTo(1500, -2);
    expect(band!.share).toBe(1);
    expect(band!.hiddenAt).toEqual([]);
  });

  it.each([
    ["kept", 100 * (49.993 + 18.048)],
    ["hidden", 100 * (36.097 - 18.048)],
    ["changed", 100 * (40 - 36.097)],
    ["unreached", 100 * (EDGE - 49.993 + EDGE - 55)],
  ] as const)("says how much of a deep level is %s", (fate, area) => {
    expect(Math.abs(ground![fate] - area)).toBeLessThan(2 * COLUMN);
  });

  it("says where", () => {
    const [place, ...others] = ground!.hiddenAt;
    expect(others).toEqual([]);
    expect(place!.from).toBeCloseTo(18.048, 0);
    expect(place!.to).toBeCloseTo(36.097, 0);
  });

  it("loses nothing: fates add up to what is wanted, levels to the picture", () => {
    for (const { wanted, kept, hidden, unreached, changed } of levels)
      expect(kept + hidden + unreached + changed).toBeCloseTo(wanted, 6);
    expect(levels.reduce((sum, { wanted }) => sum + wanted, 0)).toBeCloseTo(2 * EDGE * 100, 3);
  });

  it("hides at the left what a band at the left hides", () => {
    const [place] = seenBy(nineLeaves([[-55, -40]]), "far").levels[1]!.hiddenAt;
    expect(place!.from).toBeCloseTo(-36.097, 0);
    expect(place!.to).toBeCloseTo(-18.048, 0);
  });

  it("hides nothing behind the leaf in the middle, which points at the viewer", () => {
    expect(seenBy(nineLeaves([[-10, 10]]), "far").levels[1]!.hidden).toBe(0);
  });

  it("is the same for an eye that is very far", () => {
    const kit = nineLeaves([[40, 55]]);
    expect(seenBy(kit, 1e9).levels.map(({ hidden }) => Math.round(hidden))).toEqual(
      levels.map(({ hidden }) => Math.round(hidden)),
    );
  });

  it("is not told of a piece that is read while walking round", () => {
    expect(assessed(kitOf()).seen).toBeUndefined();
  });

  // No band ends at a tip, where a column reads what is to its right.
  it("mirrors with the picture and the reading direction", () => {
    const band = fc.tuple(fc.integer({ min: -90, max: 80 }), fc.integer({ min: 2, max: 40 }));
    fc.assert(
      fc.property(fc.array(band, { minLength: 1, maxLength: 3 }), (bands) => {
        const ltr = nineLeaves(bands.map(([from, wide]) => [from + 0.37, Math.min(EDGE, from + 0.37 + wide)]));
        const mirrored = nineLeaves(bands.map(([from, wide]) => [-Math.min(EDGE, from + 0.37 + wide), -from - 0.37]));
        const rtl = { ...mirrored, book: { ...mirrored.book, direction: "rtl" as const } };
        const [a, b] = [seenBy(ltr, "far"), seenBy(rtl, "far")];
        a.levels.forEach((level, k) => {
          expect(Math.abs(level.hidden - b.levels[k]!.hidden)).toBeLessThan(6 * COLUMN);
          expect(Math.abs(level.kept - b.levels[k]!.kept)).toBeLessThan(6 * COLUMN);
        });
      }),
      { numRuns: 25 },
    );
  });
});
