import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { heightOffer } from "../../../src/core/refit/height-offer.ts";
import type { Fits } from "../../../src/core/refit/offer.ts";
import { type KitChanges, madeKit } from "../kit/made-kit.ts";

/** The made kit (book 120 mm high, head 30) with its picture at a height. */
const at = (height: number, changes: KitChanges = {}): Kit =>
  madeKit({ ...changes, fit: { shape: { solve: "opening", pictureLeaves: "fill", height }, ...changes.fit } });

const NONE = { head: 0, tail: 0 };

const between =
  (least: number, most: number): Fits =>
  ({ height }) =>
    height! >= least && height! <= most;

const only = (kit: Kit, fits: Fits, ways?: readonly (1 | -1)[]): number | undefined => {
  const offers = heightOffer(kit, fits, NONE, ways);
  expect(offers.length).toBeLessThan(2);
  for (const { says, change } of offers) expect(says).toEqual([{ kind: "height", height: change.height }]);
  return offers[0]?.change.height;
};

describe("heightOffer(kit, fits, ways)", () => {
  it.each([
    ["the nearest lower one", 80, between(0, 71.5), 71],
    ["a lower one rather than a nearer higher one", 80, (c) => c.height! <= 40 || c.height! >= 82, 40],
    ["the nearest higher one where no lower one fits", 40, between(55, 90), 55],
    ["the whole millimetre below a height between two", 60.4, between(0, 200), 60],
    ["the whole millimetre above a height between two", 60.4, between(60.5, 200), 61],
    ["ten millimetres, the least", 40, between(0, 10), 10],
    ["nothing below ten millimetres", 40, between(0, 9.9), undefined],
    ["nothing lower where it is below ten already", 8, between(0, 7.5), undefined],
    ["the leaf's whole height, the most", 40, between(120, 500), 120],
    ["nothing beyond the leaf", 40, between(121, 500), undefined],
    ["the leaf's whole height for a picture far beyond it", 400, between(0, 500), 120],
  ] as [string, number, Fits, number | undefined][])("offers %s", (_, height, fits, offered) => {
    expect(only(at(height), fits)).toBe(offered);
  });

  // By hand: 70 mm are 22.05 eighths, 80 are 25.2, ten 3.15, and the leaf's 120 are 37.8.
  it.each([
    ["lower", 80, between(0, 70), 22],
    ["lower, though one far above would fit", 80, (c) => c.height! <= 75 || c.height! >= 90, 23],
    ["higher, as high as the leaf", 80, between(117, 500), 37],
    ["none beyond the leaf", 80, between(120, 500), undefined],
    ["the least", 80, between(0, 15), 4],
    ["none below it", 80, between(0, 12), undefined],
  ] as [string, number, Fits, number | undefined][])(
    "offers whole eighths of an inch in inches: %s",
    (_, height, fits, eighths) => {
      const offered = only(at(height, { units: "in" }), fits);
      expect(offered === undefined ? undefined : (offered * 8) / 25.4).toEqual(eighths && expect.closeTo(eighths, 9));
    },
  );

  it("goes only the ways that it is asked for", () => {
    expect(only(at(80), between(0, 71), [1])).toBeUndefined();
    expect(only(at(40), between(55, 90), [-1])).toBeUndefined();
    expect(only(at(80), (c) => c.height! <= 70 || c.height! >= 90, [1, -1])).toBe(90);
  });

  it("is nothing where the height is solved", () => {
    const solved = madeKit({ fit: { shape: { solve: "height", pictureLeaves: "fill", opening: 1 } } });
    expect(heightOffer(solved, () => true, NONE)).toEqual([]);
  });

  // By hand on a leaf of 120 mm: 30 + 90 is just the leaf; 91 leave 29, half of which is 14.5; 120 leave nothing.
  it.each([
    ["keeps the author's head while the picture lies on the leaf", {}, 90, { height: 90 }],
    ["puts it in the middle where it does not, on a mark above it", {}, 91, { height: 91, head: 14 }],
    ["puts it on half millimetres where they are marked", { fit: { markStep: 0.5 } }, 91, { height: 91, head: 14.5 }],
    [
      "puts it in the middle where the author states no head",
      { fit: { head: undefined } },
      60,
      { height: 60, head: 30 },
    ],
    ["puts a picture of the whole leaf at the head", {}, 120, { height: 120, head: 0 }],
  ] as [string, KitChanges, number, object][])("%s", (_, changes, height, change) => {
    const [offer] = heightOffer(at(height + 1, changes), between(height, height), NONE);
    expect(offer!.change).toEqual(change);
  });
});
