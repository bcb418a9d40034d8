import { describe, expect, it } from "vitest";
import type { SupplyId } from "../../../src/core/kit/supply-id.ts";
import { layOut } from "../../../src/core/packing/lay-out.ts";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { countsOf } from "../../../src/core/plan/effort.ts";
import { costOf, suppliesOf } from "../../../src/core/supplies/supplies.ts";
import type { Supply } from "../../../src/core/supplies/supply.ts";
import { partsOf } from "../../../src/core/window/window.ts";
import { FIXTURE_KITS, FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";
import { CUT_KITS } from "../../output/cut/kits.ts";
import { lengthOf, rimAndHoles } from "../geometry/plane.ts";
import type { PublishedWindow } from "../light/published-window.ts";
import { discFolder } from "../light/read-disc-kit.ts";
import { publishedText } from "../pattern/published.ts";

const listOf = ({ kit, pattern }: PatternedKit): Supply[] => suppliesOf(kit, pattern, countsOf(pattern));

const all = (folder: PatternedKit, id: SupplyId): Supply[] => listOf(folder).filter((supply) => supply.id === id);

const one = (folder: PatternedKit, id: SupplyId): Supply => {
  const found = all(folder, id);
  if (found.length !== 1) throw new Error(`${found.length} supplies ${id}`);
  return found[0]!;
};

/** What only the kit's author has a name for. */
const ownOf = (folder: PatternedKit, item: string): Supply[] =>
  listOf(folder).filter(({ id, own }) => id === undefined && own?.item === item);

const withSupplies = (more: object): PatternedKit => discFolder({ insert: { lip: 3 }, more });

/** The published pattern, read as anyone reads it. */
const published = (folder: PatternedKit): PublishedWindow => JSON.parse(publishedText(folder)) as PublishedWindow;

describe.each(CUT_KITS)("sheets to buy for %s", (_, { folder }) => {
  it.each(["card", "acetate"] as const)("are those of the layout, %s", (material) => {
    const parts = partsOf(folder.pattern.window).filter((part) => part.material === material);
    const fitting = folder.kit.sheets
      .map((sheet) => layOut(parts, sheet))
      .find((layout) => layout.tooLarge.length === 0)!;
    const gauge = material === "card" ? 1 : 0;
    const bought = one(folder, material);
    expect(bought).toMatchObject({ quantity: fitting.sheets.length + gauge, unit: "sheet" });
    expect(bought.reason).toMatchObject({ kind: material, sheet: fitting.sheet.name, tooLarge: [] });
  });
});

describe("sheets to buy", () => {
  it("are counted on the first size that takes all parts", () => {
    const small = { name: "small", width: 100, height: 100 };
    expect(one(withSupplies({ sheets: [small, "a4"] }), "acetate").reason).toMatchObject({ sheet: "A4", tooLarge: [] });
    const folder = withSupplies({ sheets: [small] });
    const none = one(folder, "acetate");
    expect(none.reason).toEqual({ kind: "acetate", sheet: "small", tooLarge: [folder.pattern.window!.glazing] });
    expect(none.quantity).toBe(1);
  });

  it("are one of card, for the gauge, where there is no window", () => {
    const folder = discFolder({ light: false });
    expect(one(folder, "card")).toMatchObject({ quantity: 1, reason: { kind: "card", gauge: 1, window: 0 } });
    expect(all(folder, "acetate")).toEqual([]);
  });
});

// Source: arithmetic. Tape runs twice round the base frame's outline; waste is added, and lengths are bought by 100 mm.
describe("lengths", () => {
  it.each([0, 0.1, 0.35])("of tape and string follow outline and closure, with waste %d", (waste) => {
    const folder = withSupplies({ waste });
    const pattern = published(folder);
    const frame = pattern.insert.parts.find((part) => part.name === "base frame")!;
    const round = lengthOf(rimAndHoles(frame.outlines).rim);
    expect(Math.abs(pattern.insert.frameLength - round)).toBeLessThan(0.05);
    const bought = (mm: number): number => Math.ceil((mm * (1 + waste)) / 100) / 10;
    expect(one(folder, "tape")).toMatchObject({ quantity: bought(2 * round), unit: "m" });
    expect(one(folder, "tape").reason).toMatchObject({ kind: "tape", waste });
    expect(one(folder, "string")).toMatchObject({ quantity: bought(pattern.insert.stringLength), unit: "m" });
  });
});

describe("glue dots", () => {
  it.each(FIXTURE_KITS)("are one a tack that the table lists, and a few for the window: %s", (slug) => {
    const folder = readKit(fixtureFolder(slug), FIXTURES);
    const pattern = published(folder);
    const tacks = pattern.leaves
      .flatMap((leaf) => leaf.tacks)
      .filter((tack) => tack.to - tack.from >= pattern.fit.leastTab - 1e-6);
    const window = pattern.insert ? 8 : 0;
    const [dots] = all(folder, "glueDots");
    expect(dots?.quantity ?? 0).toBe(tacks.length + window);
    if (dots) expect(dots.reason).toEqual({ kind: "glue-dots", tacks: tacks.length, window });
  });
});

describe("blades", () => {
  it("are one for every 250 cuts begun, and one for the window", () => {
    const folder = withSupplies({});
    const pattern = published(folder);
    const cuts = pattern.leaves.reduce((sum, leaf) => sum + leaf.cuts.length, 0) + pattern.light.notches.length;
    expect(one(folder, "blades").quantity).toBe(Math.ceil(cuts / 250) + 1);
    expect(one(folder, "blades").reason).toEqual({ kind: "blades", cuts, perBlade: 250 });
  });
});

describe("a kit's own supplies", () => {
  const own = [
    { item: "Double-Sided Tape", quantity: 2, unit: "rolls", price: 3.5 },
    { item: "moss", quantity: 3, unit: "handfuls", price: 1.25 },
    { item: "love" },
  ];
  const folder = withSupplies({ supplies: own, prices: { tape: 9 } });

  it("take the place of a computed one of that name, whatever its capitals", () => {
    expect(one(folder, "tape")).toMatchObject({
      own: { item: "Double-Sided Tape", unit: "rolls" },
      quantity: 2,
      unit: undefined,
      price: 3.5,
    });
    expect(ownOf(folder, "Double-Sided Tape")).toEqual([]);
  });

  it("follow the computed materials where they are new", () => {
    expect(ownOf(folder, "moss")).toMatchObject([
      { kind: "material", quantity: 3, own: { unit: "handfuls" }, unit: undefined, price: 1.25 },
    ]);
    expect(ownOf(folder, "love")).toMatchObject([{ quantity: 1, unit: "each", price: undefined }]);
    const materials = listOf(folder).filter(({ kind }) => kind === "material");
    expect(materials.slice(-2).map(({ own }) => own?.item)).toEqual(["moss", "love"]);
    expect(materials.slice(0, -2).every(({ id }) => id !== undefined)).toBe(true);
  });

  it("keep both of two that are named alike", () => {
    const twice = withSupplies({
      supplies: [
        { item: "ribbon", unit: "m", quantity: 2 },
        { item: "Ribbon", unit: "rolls", quantity: 1 },
      ],
    });
    expect([...ownOf(twice, "ribbon"), ...ownOf(twice, "Ribbon")].map(({ unit }) => unit)).toEqual(["m", undefined]);
  });

  it("of another quantity than computed cost that quantity at the kit's price for one", () => {
    const more = withSupplies({ supplies: [{ item: "card", quantity: 10, unit: "sheets" }], prices: { card: 0.4 } });
    expect(one(more, "card")).toMatchObject({ quantity: 10, unit: "sheet", price: 4 });
  });

  it("do not list a tool a second time", () => {
    const knife = withSupplies({ supplies: [{ item: "Craft knife", price: 6 }] });
    expect(all(knife, "knife")).toMatchObject([{ kind: "tool", price: 6 }]);
    expect(ownOf(knife, "Craft knife")).toEqual([]);
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
    let sum = 0;
    for (const [id, price] of Object.entries(prices) as [keyof typeof prices, number][]) {
      const bought = one(folder, id);
      const expected = Math.round(price * bought.quantity * 100) / 100;
      expect(bought.price, id).toBeCloseTo(expected, 9);
      sum += expected;
    }
    const supplies = listOf(folder);
    expect(supplies.filter((supply) => supply.price !== undefined)).toHaveLength(11);
    expect(costOf(supplies)).toBeCloseTo(sum + 1.25, 9);
    // The published pattern gives the same prices.
    expect(published(folder).supplies.map(({ price }) => price)).toEqual(supplies.map(({ price }) => price));
  });

  it("are left out where none is stated, and so is the cost", () => {
    const supplies = listOf(discFolder({ insert: { lip: 3 } }));
    expect(costOf(supplies)).toBeUndefined();
    expect(supplies.every((supply) => supply.price === undefined)).toBe(true);
  });
});

describe("lengths to buy for a kit in inches", () => {
  it("are in feet, to the next quarter", () => {
    const folder = withSupplies({ units: "in", waste: 0 });
    const pattern = published(folder);
    const feet = (mm: number): number => Math.ceil(mm / 76.2) / 4;
    const frame = pattern.insert.frameLength;
    expect(one(folder, "tape")).toMatchObject({ quantity: feet(2 * frame), unit: "ft" });
    expect(one(folder, "string")).toMatchObject({ quantity: feet(pattern.insert.stringLength), unit: "ft" });
  });
});
