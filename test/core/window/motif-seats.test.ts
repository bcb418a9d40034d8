import { describe, expect, it } from "vitest";
import { SEATS, seatMotifs } from "../../../src/core/window/motif-seats.ts";

/** A hole of 100 by 100 mm in a frame that is 20 mm wider all round. */
const GROUND = {
  frame: { left: -60, top: 40, right: 80, bottom: 180 },
  hole: { left: -40, top: 60, right: 60, bottom: 160 },
  light: { left: -8, top: 100, right: 12, bottom: 150 },
};

const COVER = { at: undefined, coversLight: true } as const;
const ASIDE = { at: undefined, coversLight: false } as const;

const size = (width: number, height: number) => ({ width, height });

describe("seatMotifs(wishes, sizes, ground)", () => {
  it("sets one that covers the light before it, its foot on the light's floor", () => {
    expect(seatMotifs([COVER], [size(40, 60)], GROUND)).toEqual([[2 - 20, 150 - 60]]);
  });

  it("sets it in the middle, just above the foot of the hole, where there is no light or its floor lies lower", () => {
    expect(seatMotifs([COVER], [size(40, 60)], { ...GROUND, light: undefined })).toEqual([[10 - 20, 159 - 60]]);
    const low = { ...GROUND.light, bottom: 170 };
    expect(seatMotifs([COVER], [size(40, 60)], { ...GROUND, light: low })).toEqual([[2 - 20, 159 - 60]]);
  });

  it("sets the others high on the right, low on the left, high on the left and low on the right, in their order", () => {
    const wishes = [ASIDE, COVER, ASIDE, ASIDE, ASIDE];
    const seats = seatMotifs(wishes, [size(24, 10), size(40, 60), size(20, 14), size(9, 9), size(5, 8)], GROUND);
    expect(wishes).toHaveLength(SEATS + 1);
    expect(seats.filter((_, i) => i !== 1)).toEqual([
      [55 - 24, 85],
      [-37.5, 147 - 14],
      [-37.5, 85],
      [55 - 5, 147 - 8],
    ]);
  });

  it.each([
    ["millimetres", [{ mm: 30 }, { mm: 20 }]],
    ["shares of the frame, which is 140 mm", [{ share: 3 / 14 }, { share: 2 / 14 }]],
  ] as const)("sets the middle where the kit says, in %s", (_, at) => {
    for (const coversLight of [true, false])
      expect(seatMotifs([{ at, coversLight }], [size(10, 6)], GROUND)).toEqual([
        [expect.closeTo(-60 + 30 - 5, 9), expect.closeTo(40 + 20 - 3, 9)],
      ]);
  });
});
