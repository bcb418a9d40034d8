import { describe, expect, it } from "vitest";
import { BOUGHT_BY, isLength, toBuy } from "../../../src/core/supplies/lengths.ts";

describe("toBuy(amount, unit)", () => {
  it.each([
    [0.81, "m", 0.9],
    [0.9, "m", 0.9],
    [0.9000000001, "m", 0.9],
    [0.90001, "m", 1],
    [0, "m", 0],
    [3.1, "ft", 3.25],
    [3.25, "ft", 3.25],
    [3.26, "ft", 3.5],
    [2, "sheet", 2],
    [2.1, "sheet", 3],
    [1.2, undefined, 2],
  ] as const)("buys of %d %s %d", (amount, unit, bought) => {
    expect(toBuy(amount, unit)).toBeCloseTo(bought, 12);
  });
});

describe("isLength(unit) and BOUGHT_BY", () => {
  it("measure out metres and feet, and count everything else", () => {
    expect((["m", "ft", "sheet", "each", "set", undefined] as const).map(isLength)).toEqual([
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  // A foot is 12 inches of 25.4 mm.
  it("buy by the metre, or by the foot in inches", () => {
    expect(BOUGHT_BY.mm).toEqual({ unit: "m", length: 1000 });
    expect(BOUGHT_BY.in).toEqual({ unit: "ft", length: expect.closeTo(304.8, 9) });
  });
});
