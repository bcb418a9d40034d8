import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { LightWish } from "../../../src/core/light/light.ts";
import { computePattern, largestLight, patternAt, tryFit } from "../../../src/core/pattern/compute.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { tip } from "../../oracle/fan.ts";
import { BANDS, bandsOf, fanFor, kitOf, patternFor } from "./made.ts";

const lostLeaves = (...leaves: number[]) => ({ lostLeaves: leaves.map(leafNumber) });

/** The level that a leaf shows between 50 and 150 mm; 3 on a border. */
const levelOn = (pattern: Pattern, leaf: number): number =>
  pattern.leaves.find((one) => one.leaf === leaf)!.spans.find(({ from, to }) => from <= 100 && to > 100)!.level;

describe("computePattern(kit)", () => {
  it("folds borders and picture, and names each leaf by its printed pages", () => {
    const pattern = patternFor(kitOf());
    expect(pattern.leaves.map(({ leaf }) => leaf)).toEqual(Array.from({ length: 14 }, (_, i) => i + 1));
    expect(pattern.leaves.map((leaf) => levelOn(pattern, leaf.leaf))).toEqual([3, 3, ...BANDS, 3, 3]);
    const numbers = pattern.leaves.map(({ patternPage, bookPage }) => [patternPage, bookPage]);
    expect(numbers.slice(0, 4)).toEqual([
      [null, null],
      [null, null],
      [1, 1],
      [3, 3],
    ]);
    expect(numbers.slice(-3)).toEqual([
      [19, 19],
      [null, 21],
      [null, 23],
    ]);
    expect(pattern.leaves[0]!.name).toEqual({ kind: "front", index: 1, of: 2 });
    expect(pattern.leaves[2]!.name).toEqual({ kind: "numbered", recto: 1, verso: 2 });
    expect(pattern).toMatchObject({ background: 3, pocket: undefined, window: undefined, lostLeaves: [], merged: [] });
  });

  // By hand, from the fan's definition: rooted on an arc as long as the block is thick, leaf j of 14 at Φ·((j − ½)/14 − ½).
  it("states the fit with its widths", () => {
    const kit = kitOf();
    const { fit } = patternFor(kit);
    const fan = fanFor(kit);
    const between = (from: number, to: number) => Math.hypot(from, to);
    const [first, last] = [tip(fan, 3, 20), tip(fan, 12, 20)];
    expect(fit).toMatchObject({ firstLeaf: 3, lastLeaf: 12, head: 50, height: 100, markStep: 0.5, leastTab: 3 });
    expect(fit).toMatchObject({ spine: "rounded", view: "along", foldStyle: "single", opening: Math.PI / 6 });
    expect(fit.tipWidth).toBeCloseTo(between(last.x - first.x, last.z - first.z), 9);
    // At the head both are folded at the background, 60 mm deep.
    const [one, other] = [tip(fan, 3, 60), tip(fan, 12, 60)];
    expect(fit.holdWidth).toBeCloseTo(between(other.x - one.x, other.z - one.z), 9);
    // The block of 1.4 mm and two boards of 2 mm; leaves and a square of 3 mm.
    expect(fit.boardWidth).toBeCloseTo(5.4 + 2 * 123 * Math.sin(Math.PI / 12), 9);
    // Ten arcs of 1/14 of the opening at radius 100, and of the spine's arc, as chords.
    const pitch = Math.hypot(tip(fan, 4, 20).x - first.x, tip(fan, 4, 20).z - first.z);
    expect(fit.width).toBeCloseTo(10 * pitch, 9);
    expect(fit.stretch).toBeCloseTo((10 * pitch) / 100, 9);
  });

  it("measures the hold width at the heads as they are folded", () => {
    const kit = kitOf({
      fit: { head: 0, shape: { solve: "nothing", pictureLeaves: "fill", height: 200, opening: Math.PI / 6 } },
    });
    const fan = fanFor(kit);
    const [first, last] = [tip(fan, 3, 20), tip(fan, 12, 60)];
    expect(patternFor(kit).fit.holdWidth).toBeCloseTo(Math.hypot(last.x - first.x, last.z - first.z), 9);
  });

  // By hand: where every leaf is folded 60 mm deep, flaps lie from the gutter to 60 mm; at 40 mm deep down to 40 mm.
  it.each([
    { unfolded: 0, flapBulk: 2, forced: (14 * 0.1 * 2) / 40 },
    { unfolded: 1, flapBulk: 2, forced: (13 * 0.1 * 2) / 40 },
    { unfolded: 1, flapBulk: 3, forced: (13 * 0.1 * 3) / 40 },
  ])(
    "states the opening that the flaps force: $unfolded unfolded, $flapBulk thicknesses a flap",
    ({ unfolded, flapBulk, forced }) => {
      const levels = [20, 40].map((depth, i) => ({ name: `${i}`, depth, line: undefined, background: i === 1 }));
      const kit = kitOf({
        levels,
        picture: { ...bandsOf([2]), background: 2 },
        fit: {
          flapBulk,
          borderLeaves: [2, 2 - unfolded],
          shape: { solve: "nothing", pictureLeaves: 10, height: 100, opening: 1 },
        },
      });
      expect(patternFor(kit).fit.restingOpening).toBeCloseTo(forced, 9);
    },
  );

  it("tells doubts beside the pattern", () => {
    const result = computePattern(kitOf());
    // Ten leaves on 38 mm, narrower than the height of 100 mm asks for.
    expect(result.fits && result.findings.map(({ kind }) => kind)).toEqual(["coarse", "out-of-shape"]);
  });
});

// Common practice, no source: a flap is tacked where the next leaf that is there leaves more than half of it free. Levels are
// 20, 40 and 60 mm deep: before level 2 half and before level 3 all of level 1 lies free; of level 2 before level 3 just half.
describe("tacks", () => {
  const DEPTHS = [20, 40, 60];
  const loose = (own: number, next: number): boolean => DEPTHS[next - 1]! - DEPTHS[own - 1]! > DEPTHS[own - 1]! / 2;

  const sets = [
    [],
    ...Array.from({ length: 10 }, (_, i) => [i + 3]),
    ...Array.from({ length: 9 }, (_, i) => [i + 3, i + 4]),
    [3, 12],
    [5, 7, 8, 11],
  ];
  it.each(sets.map((set) => [set.join(", ") || "none", set] as const))(
    "are where the next leaf leaves a flap free, lost: %s",
    (_, lost) => {
      const pattern = patternFor(kitOf({ fit: lostLeaves(...lost) }));
      expect(pattern.lostLeaves).toEqual(lost);
      const there = Array.from({ length: 14 }, (_, i) => i + 1).filter((leaf) => !lost.includes(leaf));
      expect(pattern.leaves.map(({ leaf }) => leaf)).toEqual(there);
      for (const [i, { leaf, spans, tacks }] of pattern.leaves.entries()) {
        const next = there[i + 1];
        const own = levelOn(pattern, leaf);
        const inPicture = spans.length > 1 ? { from: 50, to: 150 } : { from: 0, to: 200 };
        const after = next === undefined ? undefined : levelOn(pattern, next);
        const expected =
          after === undefined ? spans.map(({ from, to }) => ({ from, to })) : loose(own, after) ? [inPicture] : [];
        expect([leaf, tacks]).toEqual([leaf, expected]);
      }
    },
  );

  it("tell of the bands by hand: levels 1 before 2 or 3, and the book's last leaf", () => {
    const { leaves } = patternFor(kitOf());
    // Bands 1 2 1 3 3 2 1 1 2 3 stand on leaves 3 to 12.
    expect(leaves.filter(({ tacks }) => tacks.length > 0).map(({ leaf }) => leaf)).toEqual([3, 5, 10, 14]);
  });

  it("are not needed on a last leaf that unfolded leaves follow", () => {
    const { leaves } = patternFor(
      kitOf({ fit: { borderLeaves: [2, 1], shape: { solve: "nothing", pictureLeaves: 10, height: 100, opening: 1 } } }),
    );
    expect(leaves.at(-1)!).toMatchObject({ leaf: 13, tacks: [] });
  });

  it("look past a lost leaf at the end of the book", () => {
    const all = {
      borderLeaves: [4, 0] as const,
      shape: { solve: "nothing", pictureLeaves: 10, height: 100, opening: 1 } as const,
    };
    const last = patternFor(kitOf({ fit: { ...all, ...lostLeaves(14) } })).leaves.at(-1)!;
    expect(last.leaf).toBe(13);
    expect(last.tacks).toEqual(last.spans.map(({ from, to }) => ({ from, to })));
  });
});

describe("a light and a window", () => {
  const LIGHT: LightWish = { level: 3, diameter: 20, height: 30, clearance: 1, setback: 5, floor: 140 };
  /** A rim of level 1 about a well of level 3, on level 2. */
  const lit = (changes: Parameters<typeof kitOf>[0] = {}): Kit =>
    kitOf({
      light: LIGHT,
      picture: bandsOf([3, 3, 3, 3, 3, 3, 3, 3, 3, 3]),
      ...changes,
      fit: {
        view: "front",
        borderLeaves: [2, 1],
        shape: { solve: "nothing", pictureLeaves: 10, height: 100, opening: Math.PI / 3 },
        ...changes.fit,
      },
    });

  it("notches every leaf in the light's way, unfolded ones too, but no lost one", () => {
    const notched = (kit: Kit) => patternFor(kit).pocket!.notches.map(({ leaf }) => leaf as number);
    const near = (opening: number, ...lost: number[]) =>
      notched(
        lit({ fit: { ...lostLeaves(...lost), shape: { solve: "nothing", pictureLeaves: 10, height: 100, opening } } }),
      );
    // Folded 60 mm deep, all paper ends at 60 mm; the light begins 120 − 20 − 5 − 21 = 74 mm from the roots.
    expect(near(Math.PI / 3)).toEqual([]);
    expect(notched(lit({ light: { ...LIGHT, setback: 40 } }))).not.toEqual([]);
    const deep = { ...LIGHT, setback: 40 };
    expect(notched(lit({ light: deep }))).toContain(7);
    expect(notched(lit({ light: deep, fit: lostLeaves(7) }))).not.toContain(7);
    const narrow = { solve: "nothing", pictureLeaves: 10, height: 100, opening: 0.2 } as const;
    const closed = notched(lit({ fit: { shape: narrow } }));
    expect(closed).toEqual([14]);
  });

  it("are failures where they cannot be, and absent where they are not asked for", () => {
    const off = computePattern(lit({ light: { ...LIGHT, floor: 160 } }));
    expect(off.fits ? undefined : off.finding).toMatchObject({
      kind: "no-room-for-light",
      obstacle: { kind: "level-absent", floor: 160 },
    });
    const insert = { outline: 1, lip: 3, hinge: "left", panel: "flat" } as const;
    const hidden = computePattern(lit({ light: undefined, insert }));
    expect(hidden.fits ? undefined : hidden.finding).toEqual({ kind: "outline-hidden", level: 1 });
    expect(patternFor(lit({ light: undefined })).pocket).toBeUndefined();
  });

  it("know the largest light, also of a kit that has none", () => {
    const kit = lit({ light: undefined });
    const { width } = patternFor(kit).fit;
    // The region is as wide as the picture, from 50 to 150 mm; half a millimetre is the step.
    const { diameter, height } = largestLight(kit, { ...LIGHT, floor: "auto" });
    expect(diameter).toBe(Math.floor(2 * (width - 2)) / 2);
    expect(height).toBe(100);
    expect(largestLight(kitOf({ book: { lastPage: 99 } }), LIGHT)).toEqual({ diameter: 0, height: 0 });
  });
});

describe("a kit that does not fit", () => {
  const kit = kitOf({ book: { lastPage: 99 } });

  it("has a failure instead of a pattern", () => {
    expect(computePattern(kit)).toMatchObject({ fits: false, finding: { kind: "pages-need-more-leaves" } });
    expect(tryFit(kit)).toMatchObject({ kind: "pages-need-more-leaves" });
    expect(tryFit(kitOf())).toBeUndefined();
    expect(() => patternAt(kit)).toThrow("bands fits its book, but not at another step: pages-need-more-leaves");
    expect(patternAt(kitOf()).leaves).toHaveLength(14);
  });
});
