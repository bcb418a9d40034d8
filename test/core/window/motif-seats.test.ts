import { describe, expect, it } from "vitest";
import { seatMotifs } from "../../../src/core/window/motif-seats.ts";
import { extentOf, type Ring } from "../geometry/plane.ts";

const HOLE = { left: -40, top: 60, right: 60, bottom: 160 };

const plate = (width: number, height: number): Ring[] => [
  [
    [7, 3],
    [7 + width, 3],
    [7 + width, 3 + height],
    [7, 3 + height],
  ],
];

describe("seatMotifs(motifs, hole, light)", () => {
  const motifs = [plate(40, 60), plate(24, 10), plate(20, 14)];

  it("sets the largest before the light, its foot on the light's floor", () => {
    const box = extentOf(seatMotifs(motifs, HOLE, { middle: 2, floor: 150 })[0]!);
    expect([(box.left + box.right) / 2, box.bottom, box.width, box.height]).toEqual([2, 150, 40, 60]);
  });

  it("sets it in the middle, just above the foot of the hole, where there is no light or its floor lies lower", () => {
    for (const light of [undefined, { middle: 10, floor: 170 }]) {
      const box = extentOf(seatMotifs(motifs, HOLE, light)[0]!);
      expect([(box.left + box.right) / 2, box.bottom]).toEqual([10, 159]);
    }
  });

  it("sets the second high on the right and the third low on the left, inside the hole, and no more", () => {
    const seated = seatMotifs([...motifs, plate(5, 5)], HOLE, undefined);
    expect(seated).toHaveLength(3);
    const [, second, third] = seated.map(extentOf);
    expect(second!.right).toBeCloseTo(55, 9);
    expect(second!.top).toBeCloseTo(85, 9);
    expect(third!.left).toBeCloseTo(-37.5, 9);
    expect(third!.bottom).toBeCloseTo(147, 9);
  });
});
