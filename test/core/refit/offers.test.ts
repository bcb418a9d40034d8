import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { OfferedChange } from "../../../src/core/refit/offer.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { LIGHT, litKit, madeKit } from "../kit/made-kit.ts";
import { failureOf, patternOf } from "../pattern/computed.ts";
import { opened } from "./opened.ts";

const made = madeKit();
const lit = litKit();

const THIN = { leaves: 8, blockThickness: 1.2, pageOneLeaf: leafNumber(1), lastPage: 16 };
const THICK = { leaves: 1200, blockThickness: 180 };
const height = (mm: number): OfferedChange => ({ kind: "height", height: mm });
const borders = (leaves: number): OfferedChange => ({ kind: "borders", before: leaves, after: leaves });
const book = (bound: "least" | "most", leaves: number): OfferedChange => ({
  kind: "book",
  bound,
  leaves,
  thickness: expect.closeTo(leaves * 0.15, 9) as unknown as number,
});

/*
 * By hand from the kit's own figures: leaves of 0.15 mm, so closed picture leaves show 0.15 mm each; two reaches of a flap and
 * 5 mm on a leaf; the well is 0.7 of the picture's height, and the light 20 wide with 1 mm free on each side.
 */
const BY_HAND: readonly (readonly [string, Kit, Refit, readonly (readonly OfferedChange[])[]])[] = [
  ["a low book: the leaf's height less 8 mm at head and tail", made, { leafHeight: 36 }, [[height(20)]]],
  ["a picture higher than the leaf: the same", made, { height: 400 }, [[height(104)]]],
  [
    "a book of 8 leaves: 2 between borders of 3, or 10 with borders of 4",
    made,
    THIN,
    [[borders(3)], [book("least", 10)]],
  ],
  // Two picture leaves of 9 beside the middle show 2 × 70 × (sin 60° − sin 40°), 31 mm; three of 10 show more than 40.
  [
    "a book of 5 leaves with fewer borders before than after: 2 beside the one that its author has",
    madeKit({ fit: { borderLeaves: [1, 6] } }),
    { leaves: 5, blockThickness: 0.75, lastPage: 10 },
    [[{ kind: "borders", before: 1, after: 2 }], [book("least", 10)]],
  ],
  [
    "the same the other way round",
    madeKit({ fit: { borderLeaves: [6, 1] } }),
    { leaves: 5, blockThickness: 0.75, lastPage: 10 },
    [[{ kind: "borders", before: 2, after: 1 }], [book("least", 10)]],
  ],
  [
    "a leaf of 40 mm: flaps of 17.5, or one fold more, 2 × 20 − 10",
    made,
    { leafWidth: 40 },
    [[{ kind: "depths", depths: [9, 17.5] }], [{ kind: "folds", foldStyle: "stepped" }]],
  ],
  [
    "a leaf of 52 mm with stepped folds: 2 × 30 − 10 and 5 more are too deep, 26.5 and 9 are not",
    madeKit({ levels: [made.levels[0]!, { ...made.levels[1]!, depth: 30 }], fit: { foldStyle: "stepped" } }),
    { leafWidth: 52 },
    [[{ kind: "depths", depths: [9.5, 28] }]],
  ],
  // In her own book the flaps of 934 border leaves spring open beyond flat.
  ["1200 leaves: 266 show less than 40 mm", made, THICK, [[book("most", 274)]]],
  // Fewer leaves would show it, but its square would be 2.4 mm high, too short to fold.
  ["a picture of 4 mm on leaves that show 4.8", made, { height: 4 }, [[height(5)]]],
  [
    "an opening beyond flat: flat",
    opened(30, "pictureLeaves"),
    { openingDegrees: 200 },
    [[{ kind: "opening", degrees: 180 }]],
  ],
  [
    "a leaf of 30 mm: flaps of 12.5, by steps of 5 % 12, and a picture that keeps 8 mm",
    made,
    { leafWidth: 30, leafHeight: 40 },
    [[{ kind: "depths", depths: [6, 12] }, height(24)]],
  ],
  ["a light too wide: the well's 56 mm less 2", lit, { lightDiameter: 70 }, [[{ kind: "light-width", diameter: 54 }]]],
  ["a light too high: the well's 56 mm", lit, { lightHeight: 90 }, [[{ kind: "light-height", height: 56 }]]],
  ["a well of 14 mm: one of 22.4", lit, { height: 20 }, [[height(32)]]],
  ["the same without a window", litKit({ insert: undefined }), { height: 20 }, [[height(32)]]],
  [
    "a low book whose well is then too low for the light: 0.7 × 54 − 1 on whole millimetres",
    lit,
    { leafHeight: 70, lightHeight: 52 },
    [[height(54), { kind: "light-height", height: 36 }]],
  ],
];

/** What one part of an offer says, as a figure of a refit; another book's figures are checked with the books. */
function figureOf(said: OfferedChange): Refit {
  switch (said.kind) {
    case "height":
      return { height: said.height };
    case "borders":
      return { borderLeaves: [said.before, said.after] };
    case "picture-leaves":
      return { pictureLeaves: said.leaves };
    case "light-width":
      return { lightDiameter: said.diameter };
    case "light-height":
      return { lightHeight: said.height };
    case "opening":
      return { openingDegrees: said.degrees };
    case "depths":
      return { depths: said.depths };
    case "folds":
      return { foldStyle: said.foldStyle };
    case "book":
      return {};
  }
}

describe("offersFor(kit, refit)", () => {
  it.each(BY_HAND)("%s", (_, kit, refit, says) => {
    failureOf(refitKit(kit, refit));
    const offers = offersFor(kit, refit);
    expect(offers.map((one) => one.says)).toEqual(says);
    for (const offer of offers) {
      patternOf(refitKit(kit, offer.refit));
      expect(offer.otherBook).toBe(offer.says[0]!.kind === "book");
      if (offer.otherBook) continue;
      const { head: _head, ...changed } = offer.refit;
      expect(changed).toEqual(Object.assign({ ...refit }, ...offer.says.map(figureOf)));
    }
  });

  it("offers nothing where the book's own figures contradict each other: they are to be read again", () => {
    expect(offersFor(made, { leaves: 30, blockThickness: 4.5, lastPage: 240 })).toEqual([]);
  });

  it("offers nothing for a kit that fits", () => {
    expect(offersFor(made, {})).toEqual([]);
    expect(offersFor(lit, {})).toEqual([]);
    expect(offersFor(lit, { lightDiameter: 54, lightHeight: 20 })).toEqual([]);
  });

  it("offers nothing where nothing helps", () => {
    expect(offersFor(litKit({ light: { ...LIGHT, setback: 0 } }), {})).toEqual([]);
  });

  // By hand: shallower in steps of 5 %, and lower.
  it("changes depths and height together where neither helps alone", () => {
    const offers = offersFor(made, { leafWidth: 40, leafHeight: 36 });
    expect(offers.map(({ says }) => says)).toEqual([[{ kind: "depths", depths: [8.5, 17] }, height(20)]]);
    expect(offers[0]!.refit).toEqual({ leafWidth: 40, leafHeight: 36, depths: [8.5, 17], height: 20, head: 8 });
  });
});
