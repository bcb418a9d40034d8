import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit, Level } from "../../../src/core/kit/kit.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";

const KIT = madeKit();
/** As its author numbers it: four unnumbered leaves at its end. */
const NUMBERED = madeKit({ book: { pageOneLeaf: leafNumber(3), lastPage: 68 } });

function lines(kit: Kit, depths: readonly number[]): (number | undefined)[] {
  return refitKit(kit, { depths }).levels.map(({ line }) => line);
}

const level = (depth: number, line: number | undefined): Level => ({
  name: `${depth}`,
  depth,
  line,
  background: false,
});

describe("refitKit(kit, refit)", () => {
  it.each([
    ["a book's sizes", { leafHeight: 130, leafWidth: 90, blockThickness: 7, direction: "rtl" }, "book"],
    ["its last page", { lastPage: 76 }, "book"],
    [
      "borders, step, folds, bulk and lost leaves",
      {
        borderLeaves: [2, 3],
        markStep: 0.5,
        foldStyle: "stepped",
        flapBulk: 1.7,
        lostLeaves: [leafNumber(9)],
        head: 12,
      },
      "fit",
    ],
  ] as const)("takes %s as they are given, and nothing else", (_, refit, part) => {
    expect(refitKit(KIT, refit)).toEqual({ ...KIT, [part]: { ...KIT[part], ...refit } });
  });

  it("is the same kit where nothing is changed", () => {
    expect(refitKit(KIT, {})).toEqual(KIT);
    expect(refitKit(litKit(), {})).toEqual(litKit());
  });

  it("takes units and the light", () => {
    expect(refitKit(KIT, { units: "in", lightDiameter: 30 })).toEqual({ ...KIT, units: "in" });
    const { light } = litKit();
    const wide = { ...light, diameter: 30, height: 45 };
    expect(refitKit(litKit(), { lightDiameter: 30, lightHeight: 45 }).light).toEqual(wide);
    expect(refitKit(litKit(), { lightHeight: 45 }).light).toEqual({ ...light, height: 45 });
  });

  // By hand: 2 × (leaves − page one's leaf + 1 − plates' leaves).
  it.each<[string, Refit, number]>([
    ["leaves", { leaves: 50 }, 96],
    ["the leaf of page 1", { pageOneLeaf: leafNumber(5) }, 72],
    ["plates", { plates: [{ afterPage: 20, leaves: 4 }] }, 68],
    ["plates to none", { plates: [] }, 76],
    ["all of them", { leaves: 50, pageOneLeaf: leafNumber(1), plates: [{ afterPage: 20, leaves: 4 }] }, 92],
    ["leaves, and states the last page", { leaves: 50, lastPage: 90 }, 90],
    ["plates, and states the last page", { plates: [], lastPage: 70 }, 70],
    ["nothing of the count", { leafHeight: 130 }, 68],
  ])("numbers the pages anew for a reader who changes %s", (_, refit, lastPage) => {
    expect(refitKit(NUMBERED, refit).book).toEqual({ ...NUMBERED.book, ...refit, lastPage });
  });

  // By hand: 2 × (leaves − 2 − 4), where page one is on leaf 3 and plates take 4 leaves: 40 leaves have 68 pages, 30 have 48, 20 have 28.
  it.each<[string, Refit, readonly number[], number]>([
    ["of as many pages keeps the plates", { leaves: 40 }, [30, 60], 68],
    ["of fewer leaves has those before its last page", { leaves: 30 }, [30], 52],
    ["of few leaves has none", { leaves: 20 }, [], 36],
    ["with an earlier last page has those before it", { lastPage: 30 }, [30], 30],
    ["whose plates are stated has these", { leaves: 20, plates: [{ afterPage: 60, leaves: 2 }] }, [60], 32],
  ])("another book %s", (_, refit, after, lastPage) => {
    const plates = [30, 60].map((afterPage) => ({ afterPage, leaves: 2 }));
    const kit = madeKit({ book: { pageOneLeaf: leafNumber(3), lastPage: 68, plates } });
    const { book } = refitKit(kit, refit);
    expect([book.plates.map(({ afterPage }) => afterPage), book.lastPage]).toEqual([after, lastPage]);
  });

  it.each([
    ["stays where the picture just lies on the leaf", { leafHeight: 70 }, 30],
    ["goes where it does not", { leafHeight: 69.9 }, undefined],
    ["goes for a height that is too much with it", { leafHeight: 80, height: 60 }, undefined],
    ["stays for a lower picture", { leafHeight: 60, height: 30 }, 30],
    ["is the reader's where she states it", { leafHeight: 60, head: 3 }, 3],
    ["stays in the author's own book", { height: 100 }, 30],
  ] as const)("the author's head %s", (_, refit, head) => {
    expect(refitKit(KIT, refit).fit.head).toBe(head);
  });

  it("keeps the author's head where the height is solved, and none where none is stated", () => {
    const solved = madeKit({ fit: { shape: { solve: "height", pictureLeaves: "fill", opening: 1 } } });
    expect(refitKit(solved, { leafHeight: 50 }).fit.head).toBe(30);
    expect(refitKit(madeKit({ fit: { head: undefined } }), { leafHeight: 100 }).fit.head).toBeUndefined();
  });

  it("takes a height always, and an opening only where the kit states one", () => {
    const degrees = 90;
    expect(refitKit(KIT, { height: 44, openingDegrees: degrees }).fit.shape).toEqual({
      solve: "opening",
      pictureLeaves: "fill",
      height: 44,
    });
    const opened = madeKit({ fit: { shape: { solve: "pictureLeaves", height: 40, opening: 1 } } });
    expect(refitKit(opened, { openingDegrees: degrees }).fit.shape).toEqual({
      solve: "pictureLeaves",
      height: 40,
      opening: expect.closeTo(Math.PI / 2, 12),
    });
    const solved = madeKit({ fit: { shape: { solve: "height", pictureLeaves: 9, opening: 1 } } });
    const stated = { solve: "nothing", pictureLeaves: 9, opening: 1, height: 44 };
    expect(refitKit(solved, { height: 44 }).fit.shape).toEqual(stated);
  });
});

describe("depths in refitKit(kit, refit)", () => {
  const gauged = madeKit({ levels: [level(18, 2), level(26, 3)], gaugeLines: [10, 18, 26, 34] });

  it.each([
    ["stay on their lines", [18, 26], [2, 3]],
    ["go to the lines at their new depth", [10, 34], [1, 4]],
    ["lose their line where none is", [18, 27], [2, undefined]],
    ["are told apart from a line from a millionth on", [18.00001, 26], [undefined, 3]],
    ["are a line's own within it", [10.0000005, 26], [1, 3]],
  ])("%s", (_, depths, expected) => {
    expect(lines(gauged, depths)).toEqual(expected);
    expect(refitKit(gauged, { depths }).levels.map(({ depth }) => depth)).toEqual(depths);
    expect(refitKit(gauged, { depths }).gaugeLines).toEqual([10, 18, 26, 34]);
  });

  it("stay as they are within a millionth", () => {
    expect(refitKit(gauged, { depths: [18.0000005, 26] }).levels).toEqual(gauged.levels);
  });

  it("keep what a shorter list leaves out", () => {
    expect(refitKit(gauged, { depths: [10] }).levels.map(({ depth }) => depth)).toEqual([10, 26]);
  });

  it("carry the gauge's lines along where those are just the levels'", () => {
    expect(refitKit(KIT, { depths: [12, 24] }).gaugeLines).toEqual([12, 24]);
    expect(refitKit(KIT, { markStep: 2 }).gaugeLines).toEqual([10, 20]);
  });

  it.each([
    ["of other lines", [level(10, 1), level(20, 2)], [10, 21]],
    ["of more lines", [level(10, 1), level(20, 2)], [10, 20, 30]],
    ["beside a level that has none", [level(10, 1), level(20, undefined)], [10, 20]],
    ["without a line", [level(10, undefined), level(20, undefined)], []],
  ])("leave a gauge %s as it is", (_, levels, gaugeLines) => {
    expect(refitKit(madeKit({ levels, gaugeLines }), { depths: [12, 24] }).gaugeLines).toEqual(gaugeLines);
  });
});
