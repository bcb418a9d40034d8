import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { type Doubt, isGrave } from "../../../src/core/findings/doubt.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { doubtsOf } from "../../../src/core/pattern/doubts.ts";
import type { Face } from "../../../src/core/pattern/face.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { box } from "../window/made.ts";
import { kitOf, patternFor } from "./made.ts";

const KIT = kitOf();
const PATTERN: Pattern = { ...patternFor(KIT), merged: [] };
/** Ten picture leaves on 27 mm stand 3 mm apart; 1 is true to shape. */
const FIT: Pattern["fit"] = { ...PATTERN.fit, opening: 1, restingOpening: 0.5, width: 27, stretch: 1 };

/**
 * Four leaves of 120 mm at −45°, −15°, 15° and 45°, rooted in one point. The front tips, at radius 100, stand at ±70.711; the
 * picture begins 10 mm before the first and is 160 mm wide.
 */
const FACE: Face = {
  fan: {
    leaves: 4,
    leafWidth: 120,
    blockThickness: 0,
    opening: (2 * Math.PI) / 3,
    spine: "flat",
    direction: "ltr",
  },
  range: { first: 0, count: 4 },
  front: { stations: [10, 0, 0, 0], edges: [], width: 160 },
  solution: { pictureLeaves: 4, height: 100, opening: 2, width: 160, stretch: 1 },
  head: 0,
  faces: [],
};

interface Changes {
  readonly kit?: Kit;
  readonly fit?: Partial<Pattern["fit"]>;
  readonly pattern?: Partial<Pattern>;
}

const doubts = ({ kit = KIT, fit, pattern }: Changes = {}): Doubt[] =>
  doubtsOf(kit, { ...PATTERN, ...pattern, fit: { ...FIT, ...fit } }, FACE);

const POCKET: NonNullable<Pattern["pocket"]> = {
  light: { level: 2, diameter: 38, height: 40, clearance: 1.5, setback: 4, floor: 150 },
  floor: 150,
  centre: { x: 0, z: 0 },
  notches: [],
  leastWidth: 41,
  largest: { diameter: 38, height: 40 },
};

const holeOf = (width: number, height: number): Pattern["window"] =>
  ({ guide: { outlines: [box(5, 7, 5 + width, 7 + height)] } }) as unknown as Pattern["window"];

describe("doubtsOf(kit, pattern, face)", () => {
  it("has nothing to say of a kit at all its limits", () => {
    expect(doubts()).toEqual([]);
  });

  it("says the graver things first, all of them", () => {
    const kit = kitOf({
      book: { blockThickness: 14, lastPage: 2, leaves: 14 },
      picture: {
        width: 16,
        height: 10,
        background: 3,
        shapes: [{ level: 2, rule: "nonzero", rings: [box(0, 0, 16, 10)] }],
      },
      fit: { view: "front" },
    });
    const merged = [{ leaf: leafNumber(4), from: 1, to: 2, level: 1, into: 2 }];
    const found = doubts({
      kit,
      fit: { opening: 0.4, width: 28, stretch: 1.2, lastLeaf: leafNumber(10) },
      pattern: { pocket: { ...POCKET, leastWidth: 20 }, window: holeOf(30, 60), merged },
    });
    expect(found.map(({ kind }) => kind)).toEqual([
      "caliper",
      "unnumbered-leaves",
      "springs-open",
      "coarse",
      "out-of-shape",
      "narrow-floor",
      "light-wider-than-hole",
      "level-out-of-reach",
      "merged-spans",
      "off-centre",
    ]);
    expect(found.map(isGrave)).toEqual([true, true, true, true, true, true, true, false, false, false]);
  });

  // Common practice, no source: a caliper outside 0.04 to 0.30 mm is almost always a mix-up of leaves and pages.
  it.each([
    [0.56, 0],
    [0.55, 1],
    [4.2, 0],
    [4.21, 1],
  ])("doubts a block of %d mm with 14 leaves: %d times", (blockThickness, times) => {
    const found = doubts({ kit: kitOf({ book: { blockThickness } }) });
    expect(found).toEqual(
      times ? [{ kind: "caliper", caliper: blockThickness / 14, least: 0.04, most: 0.3, leaves: 14 }] : [],
    );
  });

  // A tenth of 20 leaves may stay unnumbered after the last page; page 1 stands on leaf 3.
  it.each([
    [32, 2, 0],
    [30, 3, 1],
  ])(
    "doubts 20 leaves of which the last page is %d, so that %d stay unnumbered: %d times",
    (lastPage, unnumbered, times) => {
      const kit = kitOf({ book: { leaves: 20, lastPage, blockThickness: 2 }, fit: { borderLeaves: [2, 8] } });
      expect(doubts({ kit })).toEqual(times ? [{ kind: "unnumbered-leaves", lastPage, unnumbered, leaves: 20 }] : []);
    },
  );

  it("doubts an opening below the one that the flaps force", () => {
    expect(doubts({ fit: { opening: 0.5, restingOpening: 0.5 } })).toEqual([]);
    expect(doubts({ fit: { opening: 0.49, restingOpening: 0.5 } })).toEqual([
      { kind: "springs-open", opening: 0.49, resting: 0.5 },
    ]);
  });

  it("doubts picture leaves more than 3 mm apart", () => {
    expect(doubts({ fit: { width: 27.9 } })).toEqual([{ kind: "coarse", leaves: 10, column: expect.closeTo(3.1, 9) }]);
  });

  it.each([
    [1.0099, 0],
    [1.0101, 1],
    [0.9901, 0],
    [0.9899, 1],
  ])("doubts a picture that comes out %d times as wide as drawn: %d times", (stretch, times) => {
    expect(doubts({ fit: { stretch } })).toEqual(times ? [{ kind: "out-of-shape", stretch }] : []);
  });

  // 38 mm and 1.5 mm on both sides need 41 mm; a quarter of a millimetre less does not matter.
  it.each([
    [40.75, 0],
    [40.7, 1],
  ])("doubts a place for the light that is %d mm wide: %d times", (leastWidth, times) => {
    expect(doubts({ pattern: { pocket: { ...POCKET, leastWidth } } })).toEqual(
      times ? [{ kind: "narrow-floor", level: 2, width: leastWidth, need: 41 }] : [],
    );
  });

  it.each([
    [39, 60, 0],
    [38.9, 60, 1],
    [60, 39, 0],
    [60, 38.9, 1],
  ])("doubts a hole of %d by %d mm before a light of 38 mm: %d times", (width, height, times) => {
    const pattern = { pocket: POCKET, window: holeOf(width, height) };
    expect(doubts({ pattern })).toEqual(
      times
        ? [
            {
              kind: "light-wider-than-hole",
              diameter: 38,
              width: expect.closeTo(width, 9),
              height: expect.closeTo(height, 9),
            },
          ]
        : [],
    );
    expect(doubts({ pattern: { ...pattern, pocket: undefined } })).toEqual([]);
    expect(doubts({ pattern: { ...pattern, window: undefined } })).toEqual([]);
  });

  it("counts merged spans, and the leaves that have them", () => {
    const merged = [4, 4, 7].map((leaf) => ({ leaf: leafNumber(leaf), from: 1, to: 2, level: 1, into: 2 }));
    expect(doubts({ pattern: { merged } })).toEqual([{ kind: "merged-spans", spans: 3, leaves: 2, leastTab: 3 }]);
  });

  it.each([
    [12, undefined],
    [11, { unfolded: 1, before: 2, after: 3 }],
    [10, { unfolded: 2, before: 3, after: 3 }],
    [9, { unfolded: 3, before: 3, after: 4 }],
  ])("tells of leaves that stay unfolded where leaf %d carries the last of the picture", (last, told) => {
    expect(doubts({ fit: { lastLeaf: leafNumber(last) } })).toEqual(told ? [{ kind: "off-centre", ...told }] : []);
  });
});

// By hand: level 2 is folded at radius 80, where the outer tips stand at ±56.569. The front begins at −80.711, so what lies
// less than 24.142 mm or more than 137.279 mm from its left side is out of reach. Level 3 is the background. Extents are read
// at 512 places, 0.3125 mm apart.
describe("a level at the picture's side", () => {
  const reach = (
    level: number,
    from: number,
    to: number,
    fit: Partial<Kit["fit"]> = {},
    direction: "ltr" | "rtl" = "ltr",
  ) => {
    const picture = {
      width: 160,
      height: 10,
      background: 3,
      shapes: [{ level, rule: "nonzero" as const, rings: [box(from, 0, to, 10)] }],
    };
    const kit = kitOf({ picture, book: { direction }, fit: { view: "front", markStep: 0.5, ...fit } });
    return doubtsOf(kit, { ...PATTERN, fit: FIT }, { ...FACE, fan: { ...FACE.fan, direction } });
  };

  it.each([
    ["at the left", 10, 120, 14.142],
    ["at the right", 60, 150, 12.721],
    ["at both sides, the worse of them", 5, 150, 19.142],
  ])("is out of reach %s, and by how much is told", (_, from, to, missing) => {
    const [doubt, ...others] = reach(2, from, to);
    expect(others).toEqual([]);
    expect(doubt).toMatchObject({ kind: "level-out-of-reach", level: 2 });
    expect(Math.abs((doubt as { missing: number }).missing - missing)).toBeLessThan(0.32);
  });

  it("is told from more than a mark step on", () => {
    expect(reach(2, 24.2, 137.2)).toEqual([]);
    expect(reach(2, 23.8, 137.2)).toEqual([]);
    expect(reach(2, 23.1, 137.2)).toHaveLength(1);
    expect(reach(2, 24.2, 138.4)).toHaveLength(1);
    expect(reach(2, 23.1, 138.4, { markStep: 2 })).toEqual([]);
  });

  it("is seen from the other side in a book read from right to left", () => {
    const [left] = reach(2, 10, 120, {}, "rtl");
    expect(Math.abs((left as { missing: number }).missing - 12.721)).toBeLessThan(0.32);
    expect(reach(2, 22.9, 135.7, {}, "rtl")).toEqual([]);
    expect(reach(2, 24.2, 137.2, {}, "rtl")).toHaveLength(1);
  });

  it("is no matter at the front, on the background, or read walking round", () => {
    expect(reach(1, 0, 160)).toEqual([]);
    expect(reach(3, 0, 160)).toEqual([]);
    expect(reach(2, 0, 160, { view: "along" })).toEqual([]);
  });

  it("is told of every level that is", () => {
    const levels = [20, 40, 50, 60].map((depth, i) => ({ name: `${i}`, depth, line: undefined, background: i === 3 }));
    const shape = (level: number, left: number, right: number) => ({
      level,
      rule: "nonzero" as const,
      rings: [box(left, 0, right, 10)],
    });
    const picture = { width: 160, height: 10, background: 4, shapes: [shape(2, 0, 70), shape(3, 70, 160)] };
    const kit = kitOf({ levels, picture, fit: { view: "front" } });
    const found = doubtsOf(kit, { ...PATTERN, fit: FIT }, FACE);
    expect(found.map((doubt) => "level" in doubt && doubt.level)).toEqual([2, 3]);
  });
});
