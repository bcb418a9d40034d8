import { describe, expect, it } from "vitest";
import type { Stock } from "../../../src/core/class/kit-class.ts";
import type { NeededSupply, PooledSupply } from "../../../src/core/class/pooled-supply.ts";
import { nameOf, takeFromStock, unusedStock } from "../../../src/core/class/stock.ts";
import { madeClass } from "./made-seats.ts";

/** A line of the list before stock is taken off, at 0.5 for one. */
function needed(id: NeededSupply["id"], need: number, changes: Partial<NeededSupply> = {}): NeededSupply {
  return {
    kind: "material",
    id,
    own: undefined,
    unit: "each",
    sheet: undefined,
    reason: { kind: "seats", seats: 1, of: undefined },
    need,
    worth: need / 2,
    shares: new Map([[1, 1]]),
    ...changes,
  };
}

/** Stock of a supply that the program counts, and of one that only people have a name for. */
const counted = (id: NonNullable<Stock["id"]>, quantity: number): Stock => ({ id, item: "whatever", quantity });
const named = (item: string, quantity: number): Stock => ({ id: undefined, item, quantity });

const take = (line: NeededSupply, ...stock: readonly Stock[]) => {
  const [{ stock: taken, buy, toPay }] = takeFromStock([line], { stock, packs: {} }) as [PooledSupply];
  return [taken, buy, toPay];
};

describe("takeFromStock(lines, stock)", () => {
  it.each([
    ["nothing", [], 0, 10, 5],
    ["some of it", [counted("button", 4)], 4, 6, 3],
    ["all of it", [counted("button", 10)], 10, 0, 0],
    ["more than is needed, and never less than nothing is bought", [counted("button", 12)], 10, 0, 0],
    ["two stocks of it", [counted("button", 4), counted("button", 5)], 9, 1, 0.5],
    ["another thing", [counted("book", 4), named("button", 4)], 0, 10, 5],
  ] as const)("takes off %s", (_, stock, taken, buy, toPay) => {
    expect(take(needed("button", 10), ...stock)).toEqual([taken, buy, toPay]);
  });

  it("uses stock once, for the first line that needs it", () => {
    const lines = takeFromStock([needed("card", 3), needed("card", 5)], { stock: [counted("card", 4)], packs: {} });
    expect(lines.map(({ stock, buy }) => [stock, buy])).toEqual([
      [3, 0],
      [1, 4],
    ]);
  });

  it("leaves the teacher's own list as it is", () => {
    const stock = [counted("button", 4)];
    take(needed("button", 3), ...stock);
    expect(stock).toEqual([counted("button", 4)]);
  });

  // By hand: 1.25 m of 2.1 are still needed, bought as 1.3; so 0.8 are from stock. 1.3 of 2.1 of 1.05 are 0.65.
  it("buys lengths by their own steps", () => {
    expect(take(needed("tape", 2.1, { unit: "m" }), counted("tape", 0.85))).toEqual([0.8, 1.3, 0.65]);
    expect(take(needed("tape", 5.5, { unit: "ft" }), counted("tape", 0.6))).toEqual([0.5, 5, 2.5]);
  });

  it("pays nothing where no price is known", () => {
    expect(take(needed("button", 10, { worth: undefined }), counted("button", 4))).toEqual([4, 6, undefined]);
  });

  it("pays to the hundredth", () => {
    // By hand: two thirds of 1.00.
    expect(take(needed("button", 3, { worth: 1 }), counted("button", 1))).toEqual([1, 2, 0.67]);
  });

  it("tells an own thing by its name in any case, and what is counted by its id alone", () => {
    const own = { item: "Sea moss", unit: "handfuls" };
    expect(take(needed(undefined, 6, { own }), named(" sea MOSS ", 5))).toEqual([5, 1, 0.5]);
    expect(take(needed("cells", 6, { own: { item: "CR2032", unit: "" } }), named("cr2032", 5))).toEqual([5, 1, 0.5]);
    expect(take(needed("cells", 6, { own: { item: "CR2032", unit: "" } }), counted("cells", 5))).toEqual([5, 1, 0.5]);
    expect(take(needed("card", 6), { id: "acetate", item: "card", quantity: 5 })).toEqual([0, 6, 3]);
  });
});

describe("unusedStock(plan, list)", () => {
  it("is what no line has a use for", () => {
    const gold = named("gold leaf", 2);
    const stock = [counted("button", 4), gold, counted("paper", 1), counted("string", 1)];
    const list = takeFromStock([needed("button", 1), needed("paper", 1)], { stock, packs: {} });
    expect(unusedStock(madeClass({ stock }), list)).toEqual([gold, counted("string", 1)]);
    expect(unusedStock(madeClass({ stock }), [])).toEqual(stock);
  });
});

describe("nameOf(thing)", () => {
  it.each([
    [{ item: " Sea MOSS " }, "sea moss"],
    [undefined, undefined],
  ])("%j is %j", (thing, name) => {
    expect(nameOf(thing)).toBe(name);
  });
});

describe("what is sold in packs", () => {
  const packed = (need: number, pack: number, stock: readonly Stock[] = []) => {
    const [line] = takeFromStock([needed("blades", need)], { stock, packs: { blades: pack } });
    return [line!.buy, line!.packs, line!.toPay];
  };

  // By hand, at 0.5 for one: 12 need two packs of 10, which cost 20 × 0.5.
  it.each([
    [12, 10, [12, { count: 2, size: 10 }, 10]],
    [10, 10, [10, { count: 1, size: 10 }, 5]],
    [11, 1, [11, { count: 11, size: 1 }, 5.5]],
  ])("%d in packs of %d are bought whole, and paid so", (need, pack, expected) => {
    expect(packed(need, pack)).toEqual(expected);
  });

  it("are no packs where stock is enough, and only of what they are for", () => {
    expect(packed(12, 10, [counted("blades", 12)])).toEqual([0, undefined, 0]);
    expect(packed(12, 10, [counted("blades", 2)])).toEqual([10, { count: 1, size: 10 }, 5]);
    const [line] = takeFromStock([needed("button", 3)], { stock: [], packs: { blades: 10 } });
    expect([line!.packs, line!.toPay]).toEqual([undefined, 1.5]);
  });
});
