import { describe, expect, it } from "vitest";
import { stockOf } from "../../../src/input/class/stock.ts";
import { readFixtureClass, readMadeClass, smallClass } from "../../core/class/made-class.ts";

describe("stockOf({ item, quantity })", () => {
  it.each([
    ["glueDots", "glueDots"],
    ["GLUEDOTS", "glueDots"],
    ["glue dot", "glueDots"],
    ["Glue dots", "glueDots"],
    [" craft-knife blades ", "blades"],
    ["craft-knife blade", "blades"],
    ["second-hand book", "book"],
    ["Second-hand books", "book"],
    ["Narrow Double-Sided Tape", "tape"],
    ["craft knife", "knife"],
    ["packing", "packing"],
    ["Paper", "paper"],
  ])("finds what %j names", (item, id) => {
    expect(stockOf({ item, quantity: 3 })).toEqual({ id, item, quantity: 3 });
  });

  it.each(["gold leaf", "CR2032", "", "cards"])("leaves %j to a kit's own supplies", (item) => {
    expect(stockOf({ item, quantity: 1 }).id).toBeUndefined();
  });
});

describe("a class's stock", () => {
  it("is resolved as it is read, and keeps the teacher's own words", () => {
    const { stock } = readMadeClass({ ...smallClass(), stock: [{ item: "Glue Dots", quantity: 40 }] });
    expect(stock).toEqual([{ id: "glueDots", item: "Glue Dots", quantity: 40 }]);
    expect(readFixtureClass().stock.map(({ id }) => id)).toEqual(["card", "glueDots", "book", "knife"]);
  });
});
