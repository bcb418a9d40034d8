import { describe, expect, it } from "vitest";
import type { Level } from "../../../src/core/kit/kit.ts";
import { bookOffers } from "../../../src/core/refit/book-offers.ts";
import { depthOffer, shallowerAndLower } from "../../../src/core/refit/depth-offers.ts";
import { madeKit } from "../kit/made-kit.ts";

const levels = (...depths: number[]): Level[] =>
  depths.map((depth) => ({ name: `${depth}`, depth, line: undefined, background: false }));

/** As a flap allows it that must not be deeper than `most`. */
const deepestAt =
  (most: number) =>
  ({ depths }: { readonly depths?: readonly number[] }): boolean =>
    depths!.every((depth) => depth <= most);

// The made kit's leaves are 0.15 mm thick: 6 mm for 40.
describe("bookOffers(kit, fits)", () => {
  const offered = (leaves: number) => ({
    leaves,
    blockThickness: expect.closeTo(leaves * 0.15, 9),
    pageOneLeaf: 1,
    lastPage: 2 * leaves,
    plates: [],
  });
  const says = (bound: string, leaves: number) => [
    { kind: "book", bound, leaves, thickness: expect.closeTo(leaves * 0.15, 9) },
  ];

  it("offers the nearest counts of leaves of the same paper, with pages from the first leaf to the last", () => {
    expect(bookOffers(madeKit(), ({ leaves }) => leaves! >= 71 || leaves! <= 22)).toEqual([
      { says: says("least", 71), change: offered(71) },
      { says: says("most", 22), change: offered(22) },
    ]);
  });

  // Books that people find: 20 to 450 leaves, 3 to 60 mm. 400 leaves of 0.15 mm are 60 mm thick, 20 are 3 mm.
  it.each([
    ["60 mm at most", (leaves: number) => leaves >= 400, "least", 400],
    ["3 mm at least", (leaves: number) => leaves <= 20, "most", 20],
  ])("seeks %s", (_, fits, bound, leaves) => {
    expect(bookOffers(madeKit(), (change) => fits(change.leaves!))).toEqual([
      { says: says(bound, leaves), change: offered(leaves) },
    ]);
  });

  it.each([
    ["401 leaves, 60.15 mm thick", madeKit(), (leaves: number) => leaves >= 401],
    ["19 leaves, 2.85 mm thick", madeKit(), (leaves: number) => leaves <= 19],
    ["451 thin leaves", madeKit({ book: { blockThickness: 4 } }), (leaves: number) => leaves >= 451],
    ["19 thick leaves", madeKit({ book: { blockThickness: 40 } }), (leaves: number) => leaves <= 19],
  ])("needs no book that nobody has: %s", (_, kit, fits) => {
    expect(bookOffers(kit, (change) => fits(change.leaves!))).toEqual([]);
  });
});

describe("depthOffer(kit, fits)", () => {
  // By hand: 12 % less of 20 is 17.6, on half millimetres 17.5; 11 % less is 17.8, which is 18. 88 % of 10 is 8.8: 9.
  it("offers the deepest levels that fit, all less by one share, on half millimetres", () => {
    const depths = [9, 17.5];
    expect(depthOffer(madeKit(), deepestAt(17.5))).toEqual([
      { says: [{ kind: "depths", depths }], change: { depths } },
    ]);
  });

  it.each([
    // 1 % less of 60 and 100.
    ["first", levels(60, 100), 99.9, [59.5, 99]],
    // 60 % less, the most.
    ["last", levels(60, 100), 40, [24, 40]],
    ["that are not there", levels(60, 100), 39.9, undefined],
    // Less by 3 %, 5 and 5.5 stay apart: 4.85 is 5, 5.335 is 5.5. Less by 8 %: 4.6 is 4.5, 5.06 is 5.
    ["that stay one behind the other", levels(5, 5.5), 5, [4.5, 5]],
  ] as const)("tries shares to the hundredth: the %s", (_, own, most, depths) => {
    const [offer] = depthOffer(madeKit({ levels: own }), deepestAt(most));
    expect(offer?.change.depths).toEqual(depths);
  });

  it("offers no two levels at one depth, and none below the panel's 1 mm", () => {
    // By hand: less by 17 to 21 %, 2.5 is 2 and 3 is 2.5; by 25 to 30 %, both are 2 (1.875 and 2.25); by 31 %, 1.725 is 1.5 and 2.07 is 2.
    const [apart] = depthOffer(madeKit({ levels: levels(2.5, 3) }), deepestAt(2));
    expect(apart!.change.depths).toEqual([1.5, 2]);
    // 1 less by 60 % is 0.4, which no panel takes.
    const [shallow] = depthOffer(madeKit({ levels: levels(1, 20) }), deepestAt(8));
    expect(shallow!.change.depths).toEqual([1, 8]);
    // In inches the least is 2/32, as 1/32 is less than a millimetre.
    const [inches] = depthOffer(madeKit({ units: "in", levels: levels(1.6, 20) }), deepestAt(8));
    expect(inches!.change.depths![0]).toBeCloseTo((2 * 25.4) / 32, 9);
  });

  it("offers whole 32nds in inches", () => {
    const [offer] = depthOffer(madeKit({ units: "in" }), deepestAt(17.5));
    for (const depth of offer!.change.depths!)
      expect((depth * 32) / 25.4).toBeCloseTo(Math.round((depth * 32) / 25.4), 9);
  });
});

const NONE = { head: 0, tail: 0 };

describe("shallowerAndLower(kit, fits)", () => {
  // By hand: shares go by 5 %; 10 and 20 less by 15 % are 8.5 and 17.
  it("offers the deepest levels with which some height fits, and that height", () => {
    const offers = shallowerAndLower(
      madeKit(),
      ({ depths, height }) => deepestAt(17.5)({ depths: depths! }) && height! <= 33,
      NONE,
    );
    expect(offers).toEqual([
      {
        says: [
          { kind: "depths", depths: [8.5, 17] },
          { kind: "height", height: 33 },
        ],
        change: { depths: [8.5, 17], height: 33 },
      },
    ]);
  });

  it("goes down to 60 % less, and no further", () => {
    const lower = (most: number) =>
      shallowerAndLower(madeKit(), ({ depths }) => deepestAt(most)({ depths: depths! }), NONE);
    expect(lower(8)[0]!.change.depths).toEqual([4, 8]);
    expect(lower(7.9)).toEqual([]);
  });
});
