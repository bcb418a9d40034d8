import { describe, expect, it } from "vitest";
import { costsOf } from "../../../src/core/class/costs.ts";
import type { PooledSupply } from "../../../src/core/class/pooled-supply.ts";
import { fc } from "../../seed.ts";

function priced(worth: number | undefined, shares: Record<number, number>, toPay = worth): PooledSupply {
  const entries = Object.entries(shares).map(([seat, share]) => [Number(seat), share] as const);
  return {
    kind: "material",
    id: undefined,
    own: { item: "thing", unit: "pieces" },
    unit: "each",
    sheet: undefined,
    reason: { kind: "seats", seats: entries.length, of: undefined },
    need: 1,
    stock: 0,
    buy: 1,
    packs: undefined,
    worth,
    toPay,
    shares: new Map(entries),
  };
}

describe("costsOf(list, seats)", () => {
  /*
   * A worked example by hand. Three sheets of card at 0.35 = 1.05, split 600 : 300 : 100 mm² → 0.630, 0.315, 0.105.
   * 1.9 m of tape at 0.60 = 1.14, split 1.0 : 0.5 : 0.4 m → 0.600, 0.300, 0.240. Two buttons at 0.25 for seats 1 and 2.
   * Seats: 1.480, 0.865, 0.345, together 2.69. In cents 148, 86.5, 34.5: the missing cent goes to the greatest rest, and of
   * equal rests to the first seat → 1.48, 0.87, 0.34.
   */
  it("splits sheets by area, tape by length, the rest by count, to the cent", () => {
    const list = [
      priced(1.05, { 1: 600, 2: 300, 3: 100 }, 0.7),
      priced(1.14, { 1: 1, 2: 0.5, 3: 0.4 }),
      priced(0.5, { 1: 1, 2: 1 }, 0),
      priced(undefined, { 1: 1, 2: 1, 3: 1 }),
    ];
    const costs = costsOf(list, [1, 2, 3])!;
    expect([...costs.seats]).toEqual([
      [1, 1.48],
      [2, 0.87],
      [3, 0.34],
    ]);
    expect(costs.used).toBe(2.69);
    expect(costs.toPay).toBe(1.84);
  });

  it("asks nothing of a seat that has no share of a line, and keeps the order of the seats", () => {
    const costs = costsOf([priced(3, { 2: 1, 5: 2 })], [5, 1, 2])!;
    expect([...costs.seats]).toEqual([
      [5, 2],
      [1, 0],
      [2, 1],
    ]);
  });

  // By hand: 0.29 is 28.999… hundredths in binary, and 1.15 × 100 is 114.999….
  it("keeps whole cents whole", () => {
    expect(costsOf([priced(0.29, { 1: 1 }, 1.15)], [1])).toEqual({
      seats: new Map([[1, 0.29]]),
      used: 0.29,
      toPay: 1.15,
    });
  });

  it("pays nothing where all is at hand, though it is used", () => {
    expect(costsOf([priced(2, { 1: 1 }, 0)], [1])).toMatchObject({ used: 2, toPay: 0 });
  });

  // By hand: 1.00 in three parts of 33.3 cents: one is missing, for the first; 2.00 in three of 66.7: two are.
  it.each([
    [1, [0.34, 0.33, 0.33]],
    [2, [0.67, 0.67, 0.66]],
    [0.01, [0.01, 0, 0]],
  ])("gives missing cents of %d to the greatest rests", (worth, amounts) => {
    const costs = costsOf([priced(worth, { 1: 1, 2: 1, 3: 1 })], [1, 2, 3])!;
    expect([...costs.seats.values()]).toEqual(amounts);
  });

  it("is nothing without a price", () => {
    expect(costsOf([priced(undefined, { 1: 1 })], [1])).toBeUndefined();
  });

  it("adds up over the seats, whatever is split", () => {
    const seats = [1, 2, 3, 4, 5, 6, 7];
    const share = fc.record(
      Object.fromEntries(seats.map((seat) => [seat, fc.double({ min: 0.01, max: 50, noNaN: true })])),
    );
    const one = fc.tuple(fc.integer({ min: 0, max: 9999 }), share);
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 12 }), (lines) => {
        const costs = costsOf(
          lines.map(([cents, shares]) => priced(cents / 100, shares)),
          seats,
        )!;
        const cents = [...costs.seats.values()].map((amount) => Math.round(amount * 100));
        expect(cents.reduce((a, b) => a + b, 0)).toBe(lines.reduce((sum, [worth]) => sum + worth, 0));
      }),
    );
  });
});
