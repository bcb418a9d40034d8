import { describe, expect, it } from "vitest";
import { costOf } from "../../../src/core/supplies/supplies.ts";
import { LIGHT } from "../kit/made-kit.ts";
import { listOf, one, own } from "./made-supplies.ts";

describe("prices and costOf(supplies)", () => {
  const prices = {
    book: 2,
    card: 0.3,
    acetate: 1.2,
    tape: 0.8,
    string: 0.5,
    button: 0.25,
    light: 2.4,
    cells: 1.1,
    blades: 0.45,
    glueDots: 0.02,
  };

  // By hand, each price times its quantity above: two sheets of card, 0.9 m of tape, 0.2 m of string, 2 dots.
  it("are for the whole quantity to a hundredth, and the cost is their sum", () => {
    const list = listOf({ kit: { prices, light: LIGHT, supplies: [own("moss", { price: 1.25 })] } });
    const priced = list.flatMap(({ id, price }) => (price === undefined ? [] : [[id ?? "moss", price]]));
    expect(priced).toEqual([
      ["book", 2],
      ["card", 0.6],
      ["acetate", 1.2],
      ["blades", 0.45],
      ["glueDots", 0.04],
      ["light", 2.4],
      ["cells", 1.1],
      ["tape", 0.72],
      ["string", 0.1],
      ["button", 0.25],
      ["moss", 1.25],
    ]);
    expect(costOf(list)).toBeCloseTo(10.11, 9);
  });

  it("are rounded to the nearest hundredth", () => {
    const price = (tape: number) => one({ kit: { prices: { tape } } }, "tape").price;
    expect([price(0.55), price(0.54)]).toEqual([0.5, 0.49]);
  });

  it("are left out where none is stated, and so is the cost", () => {
    expect(listOf({}).every(({ price }) => price === undefined)).toBe(true);
    expect(costOf(listOf({}))).toBeUndefined();
    expect(costOf(listOf({ kit: { prices: { book: 0 } } }))).toBe(0);
  });
});
