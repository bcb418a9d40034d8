import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { FitFailure } from "../../../src/core/findings/failure.ts";
import type { Shape } from "../../../src/core/fit/shape.ts";
import {
  advisedOnLeaf,
  bookFailure,
  flapFailure,
  levelFailure,
  lostLeafFailure,
  openingFailure,
  placeFailure,
} from "../../../src/core/pattern/limits.ts";
import { kitOf, LEVELS } from "./made.ts";

const filled: Shape = { solve: "opening", pictureLeaves: "fill", height: 100 };

describe("bookFailure(kit)", () => {
  // Page 1 stands on leaf 3 of 14, so 12 leaves carry pages 1 to 24.
  it("tells where the printed pages need more leaves than there are", () => {
    expect(bookFailure(kitOf())).toBeUndefined();
    expect(bookFailure(kitOf({ book: { lastPage: 25 } }))).toEqual({
      kind: "pages-need-more-leaves",
      lastPage: 25,
      leaves: 14,
      pageOneLeaf: 3,
      needed: 15,
    });
  });

  // Leaves 3 to 14 carry pages, 12 of them: plates of 12 leave none, as does page 1 on a 15th leaf.
  it.each([
    ["page 1 beyond the book", { pageOneLeaf: leafNumber(15), lastPage: 0 }, { pageOneLeaf: 15, plates: 0 }],
    [
      "plates on all leaves from page 1 on",
      { lastPage: 0, plates: [{ afterPage: 1, leaves: 12 }] },
      { pageOneLeaf: 3, plates: 12 },
    ],
  ])("tells where no leaf is left for a page: %s", (_, book, told) => {
    expect(bookFailure(kitOf({ book }))).toEqual({ kind: "no-page", leaves: 14, ...told });
  });

  it("tells plates that come after the last page, which are end leaves", () => {
    const plates = (afterPage: number) => [
      { afterPage: 2, leaves: 1 },
      { afterPage, leaves: 1 },
    ];
    const book = (afterPage: number) => kitOf({ book: { lastPage: 19, plates: plates(afterPage) } });
    expect(bookFailure(book(19))).toBeUndefined();
    expect(bookFailure(book(20))).toEqual({
      kind: "plates-after-last-page",
      entry: 2,
      afterPage: 20,
      lastPage: 19,
    });
  });

  it.each<[string, Shape, number]>([
    ["to fill", filled, 2],
    ["to be counted", { solve: "pictureLeaves", height: 100, opening: 1 }, 2],
    ["that are stated", { ...filled, pictureLeaves: 5 }, 5],
  ])("tells where the borders leave fewer picture leaves than are needed, %s", (_, shape, picture) => {
    const borders = (before: number) => kitOf({ fit: { shape, borderLeaves: [before, 4] } });
    expect(bookFailure(borders(10 - picture))).toBeUndefined();
    expect(bookFailure(borders(11 - picture))).toEqual({
      kind: "too-few-leaves",
      before: 11 - picture,
      picture,
      after: 4,
      leaves: 14,
      most: picture - 1,
    });
  });
});

describe("levelFailure(kit)", () => {
  const depths = (...list: number[]) => kitOf({ levels: LEVELS.map((level, i) => ({ ...level, depth: list[i]! })) });

  it("tells the first level that lies no deeper than the one before it", () => {
    expect(levelFailure(depths(20, 20.1, 20.2))).toBeUndefined();
    const failure = { kind: "levels-out-of-order", level: 2, before: 30 };
    expect(levelFailure(depths(30, 30, 30))).toEqual({ ...failure, depth: 30 });
    expect(levelFailure(depths(30, 20, 25))).toEqual({ ...failure, depth: 20 });
    expect(levelFailure(depths(30, 40, 39))).toEqual({ ...failure, level: 3, depth: 39, before: 40 });
  });
});

// By hand. Folded once, a flap reaches twice its depth inward: 2·60 is all of 120. Folded at the front line first, the second
// flap reaches 2d − 20.
describe("flapFailure(kit)", () => {
  it("tells a flap that runs into the gutter, and the deepest that does not", () => {
    expect(flapFailure(kitOf())).toBeUndefined();
    const told = { kind: "flap-in-gutter", level: 3, depth: 60, reach: 120, foldStyle: "single" };
    expect(flapFailure(kitOf({ fit: { gutterClearance: 1 } }))).toEqual({
      ...told,
      leafWidth: 120,
      clearance: 1,
      deepest: 59.5,
    });
    expect(flapFailure(kitOf({ book: { leafWidth: 119 } }))).toMatchObject({ ...told, deepest: 59.5 });
    expect(flapFailure(kitOf({ book: { leafWidth: 70 } }))).toMatchObject({ level: 2, reach: 80, deepest: 35 });
    expect(flapFailure(kitOf({ book: { leafWidth: 39 } }))).toMatchObject({ level: 1, reach: 40, deepest: 19.5 });
  });

  it("counts a second fold from the first", () => {
    const stepped = (leafWidth: number, gutterClearance = 0) =>
      flapFailure(kitOf({ book: { leafWidth }, fit: { foldStyle: "stepped", gutterClearance } }));
    expect(stepped(100)).toBeUndefined();
    expect(stepped(105, 5)).toBeUndefined();
    expect(stepped(99)).toEqual({
      kind: "flap-in-gutter",
      level: 3,
      depth: 60,
      reach: 100,
      leafWidth: 99,
      clearance: 0,
      deepest: 59.5,
      foldStyle: "stepped",
    });
    expect(stepped(100, 7)).toMatchObject({ level: 3, deepest: 56.5 });
    expect(stepped(39)).toMatchObject({ level: 1, reach: 40, deepest: 19.5 });
  });
});

describe("openingFailure(kit)", () => {
  const at = (opening: number, view: "front" | "along", solve: "height" | "nothing" | "pictureLeaves") =>
    openingFailure(kitOf({ fit: { view, shape: { solve, pictureLeaves: "fill", height: 100, opening } as Shape } }));

  it.each(["height", "nothing", "pictureLeaves"] as const)(
    "lets a book lie flat, or go once round for walkers: %s solved",
    (solve) => {
      expect(at(Math.PI, "front", solve)).toBeUndefined();
      expect(at(2 * Math.PI, "along", solve)).toBeUndefined();
      expect(at(Math.PI + 1e-6, "front", solve)).toEqual({
        kind: "opening-too-wide",
        opening: Math.PI + 1e-6,
        widest: Math.PI,
        view: "front",
      });
      expect(at(6.3, "along", solve)).toMatchObject({ widest: 2 * Math.PI, view: "along" });
    },
  );

  it("says nothing of an opening that is solved", () => {
    expect(openingFailure(kitOf({ fit: { view: "front", shape: filled } }))).toBeUndefined();
  });
});

describe("placeFailure(kit, solution, head)", () => {
  const solution = { pictureLeaves: 10, height: 150, opening: 1, width: 150, stretch: 1 };

  it("lets a picture fill the leaf from a head that is stated", () => {
    const kit = kitOf({ fit: { head: 50 } });
    expect(placeFailure(kit, solution, 50)).toBeUndefined();
    expect(placeFailure(kit, { ...solution, height: 200 }, 0)).toBeUndefined();
    expect(placeFailure(kit, solution, 50.5)).toEqual({
      kind: "picture-off-leaf",
      head: 50.5,
      height: 150,
      leafHeight: 200,
      room: 150,
      heightSolved: false,
      headStated: true,
    });
  });

  it("has the whole leaf where no head is stated, or it is 0", () => {
    for (const head of [undefined, 0]) {
      const kit = kitOf({ fit: { head, shape: { solve: "height", pictureLeaves: "fill", opening: 1 } } });
      expect(placeFailure(kit, { ...solution, height: 210 }, -5)).toMatchObject({
        head: 0,
        room: 200,
        heightSolved: true,
        headStated: false,
      });
    }
  });
});

describe("advisedOnLeaf(kit, failure)", () => {
  const wide = (mostHeight: number): FitFailure => ({
    kind: "picture-too-wide",
    height: 190,
    width: 190,
    leaves: 10,
    widest: 3,
    most: mostHeight,
    mostHeight,
    enough: undefined,
  });

  it("advises no height that would run off the leaf below its head", () => {
    const advised = (mostHeight: number, head: number | undefined) =>
      advisedOnLeaf(kitOf({ fit: { head } }), wide(mostHeight));
    expect(advised(149, 50)).toEqual(wide(149));
    expect(advised(160, 50)).toEqual({ ...wide(160), mostHeight: 150 });
    expect(advised(210, undefined)).toEqual({ ...wide(210), mostHeight: 200 });
    expect(advised(210, -3)).toMatchObject({ mostHeight: 200 });
  });

  it("leaves a failure without such advice as it is", () => {
    const narrow = { kind: "opening-too-wide", opening: 4, widest: 3, view: "front" } as const;
    expect(advisedOnLeaf(kitOf(), narrow)).toBe(narrow);
  });
});

describe("lostLeafFailure(kit, range)", () => {
  const lost = (...leaves: number[]) =>
    lostLeafFailure(kitOf({ fit: { lostLeaves: leaves.map(leafNumber) } }), { first: 2, count: 10 });

  it("lets picture leaves be lost, from leaf 3 to leaf 12", () => {
    expect(lost()).toBeUndefined();
    expect(lost(3, 12)).toBeUndefined();
    expect(lost(12, 13)).toEqual({ kind: "lost-leaf-outside", leaf: 13, first: 3, last: 12 });
    expect(lost(2, 13)).toEqual({ kind: "lost-leaf-outside", leaf: 2, first: 3, last: 12 });
  });

  it("leaves two at least; a leaf named twice is lost once", () => {
    expect(lost(3, 4, 5, 6, 7, 8, 9, 10)).toBeUndefined();
    expect(lost(3, 3, 4, 5, 6, 7, 8, 9, 10)).toBeUndefined();
    expect(lost(3, 4, 5, 6, 7, 8, 9, 10, 11)).toEqual({ kind: "too-few-remain", lost: 9, leaves: 10 });
  });
});
