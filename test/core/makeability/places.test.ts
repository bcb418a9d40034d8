import { describe, expect, it } from "vitest";
import type { LevelShape } from "../../../src/core/picture/level-map.ts";
import { kitOf } from "../pattern/made.ts";
import { box } from "../window/made.ts";
import { assessed } from "./assessed.ts";

/**
 * Ten picture leaves between borders of two, walked along: columns of one picture unit, which is 10 mm high. By hand: leaves
 * stand π/6/14 apart on a circle of 1.4/(π/6) + 100 = 102.674 mm, so a column is 2·102.674·sin(π/168) = 3.8396 mm wide. The
 * middle is between the fifth and the sixth column; the picture begins 50 mm from the head.
 */
const COLUMN = 3.8396;

type Corners = readonly [left: number, top: number, right: number, bottom: number];

/** Boxes of the front level in picture units on the background, the third level. */
function boxes(...list: readonly Corners[]) {
  const shapes: LevelShape[] = list.map((corners) => ({ level: 1, rule: "nonzero", rings: [box(...corners)] }));
  return kitOf({ picture: { width: 10, height: 10, background: 3, shapes } });
}

describe("sliversOf(pattern, place, areas)", () => {
  it("joins merged strips of neighbouring leaves", () => {
    const { slivers } = assessed(boxes([2, 4, 5, 4.2]));
    expect(slivers).toHaveLength(1);
    const { left, right, area, ...rest } = slivers[0]!;
    expect(rest).toEqual({ level: 1, into: 3, strips: 3, firstLeaf: 5, lastLeaf: 7, from: 90, to: 92, share: 1 });
    expect(left).toBeCloseTo(-3 * COLUMN, 2);
    expect(right).toBeCloseTo(0, 2);
    expect(area).toBeCloseTo(3 * COLUMN * 2, 2);
  });

  it("keeps places apart, the largest first", () => {
    const { slivers } = assessed(boxes([0, 1, 1, 1.2], [4, 4, 7, 4.2], [4, 7, 5, 7.25]));
    expect(slivers.map(({ firstLeaf, strips }) => [firstLeaf, strips])).toEqual([
      [7, 3],
      [7, 1],
      [3, 1],
    ]);
  });

  it("finds none where all can be folded", () => {
    expect(assessed(boxes([2, 4, 5, 8])).slivers).toEqual([]);
  });
});

describe("fullLeaves(pattern, place)", () => {
  const comb = (teeth: number): Corners[] =>
    Array.from({ length: teeth }, (_, i) => [6, 1 + 1.5 * i, 8, 1.6 + 1.5 * i] as const);

  it("tells leaves with more than eight cuts", () => {
    const [group, ...others] = assessed(boxes(...comb(5))).full;
    expect(others).toEqual([]);
    expect(group).toMatchObject({ firstLeaf: 9, lastLeaf: 10, leaves: 2, most: 10 });
    expect(group!.left).toBeCloseTo(COLUMN, 2);
    expect(group!.right).toBeCloseTo(3 * COLUMN, 2);
  });

  it("takes eight for comfortable", () => {
    expect(assessed(boxes(...comb(4))).full).toEqual([]);
  });
});

describe("narrowDetails(kit, face, place)", () => {
  it("tells what no leaf or one leaf shows, and where", () => {
    const { narrow } = assessed(boxes([2.6, 1, 2.9, 4], [5.2, 5, 5.9, 8], [1.2, 8.5, 3.9, 9.5]));
    expect(narrow.map(({ level, leaves }) => [level, leaves])).toEqual([
      [1, 0],
      [1, 1],
    ]);
    const { left, right, top, bottom } = narrow[0]!;
    expect(left).toBeCloseTo(-2.4 * COLUMN, 2);
    expect(right).toBeCloseTo(-2.1 * COLUMN, 2);
    expect([top, bottom]).toEqual([60, 90]);
  });

  it("tells a gap between two shapes", () => {
    const { narrow } = assessed(boxes([1.2, 2, 4.1, 5], [4.9, 2, 8.1, 5]));
    expect(narrow.map(({ level, leaves }) => [level, leaves])).toEqual([[3, 1]]);
  });

  it("tells a pole on a house, and no blunt point", () => {
    expect(assessed(boxes([2.6, 1, 2.9, 4], [1, 4, 5, 8])).narrow).toHaveLength(1);
    const roof = {
      level: 1,
      rule: "nonzero",
      rings: [
        [
          [5, 1],
          [9, 9],
          [1, 9],
        ],
      ],
    } as const;
    const kit = kitOf({ picture: { width: 10, height: 10, background: 3, shapes: [roof] } });
    expect(assessed(kit).narrow).toEqual([]);
  });
});

describe("levelReaches(kit, doubts)", () => {
  // Leaves 120 mm wide, depths 20, 40, 60, no clearance: flaps reach 2·d, in stepped folds 2·d − 20 behind the front level.
  it.each([
    ["single", [80, 40, 0]],
    ["stepped", [80, 60, 20]],
  ] as const)("tells the room that %s folds leave at the gutter", (foldStyle, rooms) => {
    expect(assessed(kitOf({ fit: { foldStyle } })).reach.map(({ gutterRoom }) => gutterRoom)).toEqual(rooms);
  });
});
