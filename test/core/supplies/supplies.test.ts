import { describe, expect, it } from "vitest";
import { layOut } from "../../../src/core/packing/lay-out.ts";
import { countsOf } from "../../../src/core/plan/effort.ts";
import { costOf, suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { DEMO_KITS, demoFolder, readKit } from "../../input/kit/kit-folders.ts";
import { CUT_KITS } from "../../output/cut/kits.ts";
import { lengthOf, rimAndHoles } from "../geometry/plane.ts";
import type { PublishedSupply, PublishedWindow } from "../light/published-window.ts";
import { discFolder, discPattern } from "../light/read-disc-kit.ts";
import { publishedText } from "../pattern/published.ts";

const item = (pattern: PublishedWindow, name: string): PublishedSupply => {
  const found = pattern.supplies.filter((supply) => supply.item === name);
  if (found.length !== 1) throw new Error(`${found.length} supplies ${name}`);
  return found[0]!;
};

const withSupplies = (more: object) => discPattern({ insert: { lip: 3 }, more });

describe.each(CUT_KITS)("sheets to buy for %s", (_, { pattern, folder }) => {
  it.each(["card", "acetate"] as const)("are those of the layout, %s", (material) => {
    const parts = folder.pattern.insert!.parts.filter((part) => part.material === material);
    const fitting = folder.kit.sheets.map((sheet) => layOut(parts, sheet)).find((one) => one.tooLarge.length === 0)!;
    const gauge = material === "card" ? 1 : 0;
    const bought = item(pattern, material);
    expect(bought.quantity).toBe(fitting.sheets.length + gauge);
    expect(bought.note).toContain(fitting.sheet.name);
    expect(bought.unit).toMatch(/^sheets?$/);
  });
});

describe("sheets to buy", () => {
  it("are counted on the first size that takes all parts", () => {
    const small = { name: "small", width: 100, height: 100 };
    expect(item(withSupplies({ sheets: [small, "a4"] }), "acetate").note).toContain("A4");
    const none = item(withSupplies({ sheets: [small] }), "acetate");
    expect(none.note).toContain("too small for glazing");
    expect(none.quantity).toBe(1);
  });

  it("are one of card, for the gauge, where there is no window", () => {
    expect(item(discPattern({ light: false }), "card").quantity).toBe(1);
    expect(discPattern({ light: false }).supplies.map((supply) => supply.item)).not.toContain("acetate");
  });
});

// Source: arithmetic. Tape runs twice round the base frame's outline; waste is added, and lengths are bought by 100 mm.
describe("lengths", () => {
  it.each([0, 0.1, 0.35])("of tape and string follow outline and closure, with waste %d", (waste) => {
    const pattern = withSupplies({ waste });
    const frame = pattern.insert.parts.find((part) => part.name === "base frame")!;
    const round = lengthOf(rimAndHoles(frame.outlines).rim);
    expect(Math.abs(pattern.insert.frameLength - round)).toBeLessThan(0.05);
    const bought = (mm: number): number => Math.ceil((mm * (1 + waste)) / 100) / 10;
    expect(item(pattern, "double-sided tape")).toMatchObject({ quantity: bought(2 * round), unit: "m" });
    expect(item(pattern, "string")).toMatchObject({ quantity: bought(pattern.insert.stringLength), unit: "m" });
  });
});

describe("glue dots", () => {
  it.each(DEMO_KITS)("are one a tack that the table lists, and a few for the window: %s", (slug) => {
    const pattern = JSON.parse(publishedText(readKit(demoFolder(slug), demoFolder("../..")))) as PublishedWindow;
    const tacks = pattern.leaves
      .flatMap((leaf) => leaf.tacks)
      .filter((tack) => tack.to - tack.from >= pattern.fit.leastTab - 1e-6);
    const window = pattern.insert ? 8 : 0;
    const dots = pattern.supplies.find((supply) => supply.item === "glue dots");
    expect(dots?.quantity ?? 0).toBe(tacks.length + window);
    if (dots) expect(dots.note).toContain(`${tacks.length} for tacks`);
  });
});

describe("blades", () => {
  it("are one for every 250 cuts begun, and one for the window", () => {
    const pattern = withSupplies({});
    const cuts = pattern.leaves.reduce((sum, leaf) => sum + leaf.cuts.length, 0) + pattern.light.notches.length;
    expect(item(pattern, "craft-knife blades").quantity).toBe(Math.ceil(cuts / 250) + 1);
  });
});

describe("a kit's own supplies", () => {
  const own = [
    { item: "Double-Sided Tape", quantity: 2, unit: "rolls", price: 3.5 },
    { item: "moss", quantity: 3, unit: "handfuls", price: 1.25 },
    { item: "love" },
  ];
  const pattern = withSupplies({ supplies: own, prices: { tape: 9 } });

  it("take the place of a computed one of that name, whatever its capitals", () => {
    expect(item(pattern, "double-sided tape")).toMatchObject({ quantity: 2, unit: "rolls", price: 3.5 });
    expect(pattern.supplies.filter((supply) => supply.item.toLowerCase() === "double-sided tape")).toHaveLength(1);
  });

  it("follow the computed materials where they are new", () => {
    expect(item(pattern, "moss")).toMatchObject({ kind: "material", quantity: 3, unit: "handfuls", price: 1.25 });
    expect(item(pattern, "love")).toMatchObject({ quantity: 1, unit: "pieces" });
    expect(item(pattern, "love")).not.toHaveProperty("price");
    const items = pattern.supplies.filter((supply) => supply.kind === "material").map((supply) => supply.item);
    expect(items.slice(-2)).toEqual(["moss", "love"]);
  });

  it("keep both of two that are named alike", () => {
    const twice = withSupplies({
      supplies: [
        { item: "ribbon", unit: "m", quantity: 2 },
        { item: "Ribbon", unit: "rolls", quantity: 1 },
      ],
    });
    expect(twice.supplies.filter((supply) => supply.item.toLowerCase() === "ribbon")).toHaveLength(2);
  });

  it("of another quantity than computed cost that quantity at the kit's price for one", () => {
    const more = withSupplies({ supplies: [{ item: "card", quantity: 10, unit: "sheets" }], prices: { card: 0.4 } });
    expect(item(more, "card")).toMatchObject({ quantity: 10, price: 4 });
  });

  it("do not list a tool a second time", () => {
    const knife = withSupplies({ supplies: [{ item: "Craft knife", price: 6 }] });
    expect(knife.supplies.filter((supply) => supply.item.toLowerCase() === "craft knife")).toHaveLength(1);
  });
});

describe("prices", () => {
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

  // Source: price of one times quantity, to a hundredth, added up by hand.
  it("are for the whole quantity, and the cost is their sum", () => {
    const more = { prices, supplies: [{ item: "moss", quantity: 3, price: 1.25 }, { item: "love" }], currency: "EUR" };
    const folder = discFolder({ insert: { lip: 3 }, more });
    const pattern = JSON.parse(publishedText(folder)) as PublishedWindow;
    const each: Readonly<Record<string, number>> = {
      "second-hand book": prices.book,
      card: prices.card,
      acetate: prices.acetate,
      "double-sided tape": prices.tape,
      string: prices.string,
      button: prices.button,
      "battery LED light": prices.light,
      "cells for the light": prices.cells,
      "craft-knife blades": prices.blades,
      "glue dots": prices.glueDots,
    };
    let sum = 0;
    for (const [name, price] of Object.entries(each)) {
      const bought = item(pattern, name);
      const expected = Math.round(price * bought.quantity * 100) / 100;
      expect(bought.price, name).toBeCloseTo(expected, 9);
      sum += expected;
    }
    expect(pattern.supplies.filter((supply) => supply.price !== undefined)).toHaveLength(11);
    const supplies = suppliesOf(folder.kit, folder.pattern, countsOf(folder.pattern));
    expect(costOf(supplies)).toBeCloseTo(sum + 1.25, 9);
  });

  it("are left out where none is stated, and so is the cost", () => {
    const folder = discFolder({ insert: { lip: 3 } });
    const supplies = suppliesOf(folder.kit, folder.pattern, countsOf(folder.pattern));
    expect(costOf(supplies)).toBeUndefined();
    expect(supplies.every((supply) => supply.price === undefined)).toBe(true);
  });
});

describe("lengths to buy for a kit in inches", () => {
  it("are in feet, to the next quarter", () => {
    const pattern = withSupplies({ units: "in", waste: 0 });
    const feet = (mm: number): number => Math.ceil(mm / 76.2) / 4;
    const frame = pattern.insert.frameLength;
    expect(item(pattern, "double-sided tape")).toMatchObject({ quantity: feet(2 * frame), unit: "ft" });
    expect(item(pattern, "string")).toMatchObject({ quantity: feet(pattern.insert.stringLength), unit: "ft" });
  });
});
