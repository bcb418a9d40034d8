import { describe, expect, it } from "vitest";
import type { Kit, OwnSupply } from "../../../src/core/kit/kit.ts";
import type { SupplyId } from "../../../src/core/kit/supply-id.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import type { Counts } from "../../../src/core/plan/effort.ts";
import { costOf, suppliesOf } from "../../../src/core/supplies/supplies.ts";
import type { Supply } from "../../../src/core/supplies/supply.ts";
import { LIGHT, madeKit } from "../kit/made-kit.ts";
import { madePart, madePattern, madeWindow } from "../plan/made-pattern.ts";

const NOTHING: Counts = {
  leaves: 0,
  scores: 0,
  marks: 0,
  cuts: 0,
  folds: 0,
  checks: 0,
  tacks: 0,
  notches: 0,
  parts: 0,
};
const WINDOWED = madePattern({ window: madeWindow() });
const A4 = { name: "A4", width: 210, height: 297 };
const CRAFT = { name: "12 × 12 in", width: 304.8, height: 304.8 };
const SMALL = { name: "small", width: 140, height: 140 };

interface Given {
  readonly kit?: Partial<Kit>;
  readonly pattern?: Pattern;
  readonly counts?: Partial<Counts>;
}

function listOf({ kit, pattern = WINDOWED, counts = { parts: 9 } }: Given): Supply[] {
  return suppliesOf(madeKit(kit), pattern, { ...NOTHING, ...counts });
}

const all = (given: Given, id: SupplyId): Supply[] => listOf(given).filter((supply) => supply.id === id);

const one = (given: Given, id: SupplyId): Supply => {
  const found = all(given, id);
  if (found.length !== 1) throw new Error(`${found.length} supplies ${id}`);
  return found[0]!;
};

const own = (item: string, changes: Partial<OwnSupply> = {}): OwnSupply => ({
  id: undefined,
  item,
  quantity: 1,
  unit: "handfuls",
  unitId: undefined,
  price: undefined,
  ...changes,
});

const ids = (given: Given, kind: Supply["kind"]) =>
  listOf(given)
    .filter((supply) => supply.kind === kind)
    .map(({ id, quantity, unit }) => [id, quantity, unit]);

/*
 * Source: common practice of the trade, no standard. A bone folder presses and folds, ruler and pencil mark, the gauge wants
 * packing under the side that sinks; a knife and its mat only where something is cut.
 */
describe("tools", () => {
  const always = ["boneFolder", "ruler", "pencil"];

  it.each<[string, Partial<Counts>, string[]]>([
    ["nothing is cut", {}, [...always, "packing"]],
    ["leaves are cut", { cuts: 1 }, [...always, "knife", "mat", "packing"]],
    ["notches are cut", { notches: 1 }, [...always, "knife", "mat", "packing"]],
    ["window parts are cut", { parts: 1 }, [...always, "knife", "mat", "packing"]],
  ])("are one of each where %s", (_, counts, tools) => {
    expect(ids({ counts }, "tool")).toEqual(tools.map((id) => [id, 1, "each"]));
  });

  // By hand: the block is 6 mm thick, so pieces of 2.5 mm are three, of 2 mm three, of 1.9 mm four.
  it.each([
    [undefined, 0],
    [2.5, 3],
    [2, 3],
    [1.9, 4],
  ])("count packing in pieces of %s mm as %d", (gaugeTile, pieces) => {
    expect(one({ kit: { gaugeTile } }, "packing").reason).toEqual({
      kind: "packing",
      height: 6,
      piece: gaugeTile,
      pieces,
    });
  });

  it("have no price and no reason but that they are tools", () => {
    expect(one({ kit: { prices: { book: 1 } } }, "boneFolder")).toEqual({
      kind: "tool",
      id: "boneFolder",
      own: undefined,
      quantity: 1,
      exact: 1,
      unit: "each",
      reason: { kind: "tool" },
      price: undefined,
    });
  });
});

// Counted by hand from the made window: a frame, door, two tabs, a holder and two motifs of card on one A4, one glazing.
describe("materials", () => {
  it("of a kit with light and window are each of these once", () => {
    const given = { kit: { light: LIGHT }, counts: { cuts: 250, tacks: 3, parts: 9 } };
    expect(ids(given, "material")).toEqual([
      ["book", 1, "each"],
      ["card", 2, "sheet"],
      ["acetate", 1, "sheet"],
      ["blades", 2, "each"],
      ["glueDots", 11, "each"],
      ["light", 1, "each"],
      ["cells", 1, "set"],
      ["tape", 0.9, "m"],
      ["string", 0.2, "m"],
      ["button", 1, "each"],
    ]);
  });

  it("of a kit that is only folded are its book and the gauge's card", () => {
    expect(ids({ pattern: madePattern(), counts: {} }, "material")).toEqual([
      ["book", 1, "each"],
      ["card", 1, "sheet"],
    ]);
  });

  it("tell of the book and the light which ones", () => {
    expect(one({}, "book").reason).toEqual({ kind: "book", leaves: 40, leafHeight: 120, leafWidth: 80 });
    expect(one({ kit: { light: LIGHT } }, "light").reason).toEqual({ kind: "light", diameter: 20, height: 20 });
    expect(one({ kit: { light: LIGHT } }, "cells").own).toBeUndefined();
    expect(one({ kit: { light: LIGHT, cells: "CR2032" } }, "cells").own).toEqual({ item: "CR2032", unit: "" });
  });
});

// A fresh blade for every 250 cuts begun (common practice, no source), and one for the window.
describe("blades", () => {
  it.each([
    [0, 0, 0, undefined],
    [1, 0, 0, 1],
    [250, 0, 0, 1],
    [249, 1, 0, 1],
    [249, 2, 0, 2],
    [251, 0, 0, 2],
    [0, 1, 0, 1],
    [0, 0, 1, 1],
    [250, 0, 9, 2],
  ])("for %d cuts, %d notches and %d parts are %s", (cuts, notches, parts, blades) => {
    const [bought] = all({ counts: { cuts, notches, parts } }, "blades");
    expect(bought?.quantity).toBe(blades);
    if (bought) expect(bought.reason).toEqual({ kind: "blades", cuts: cuts + notches, perBlade: 250 });
  });
});

describe("glue dots", () => {
  it.each([
    [0, madePattern(), undefined],
    [1, madePattern(), 1],
    [0, WINDOWED, 8],
    [5, WINDOWED, 13],
  ] as const)("are one a tack (%d), and 8 for a window", (tacks, pattern, dots) => {
    const [bought] = all({ pattern, counts: { tacks } }, "glueDots");
    expect(bought?.quantity).toBe(dots);
    const window = pattern.window ? 8 : 0;
    if (bought) expect(bought.reason).toEqual({ kind: "glue-dots", tacks, window });
  });
});

describe("sheets", () => {
  // By hand: a field of A4 is 194 × 281; two frames of 190 × 150 do not lie on one, a third sheet is the gauge's.
  it("are as many as the parts need, and one for the gauge", () => {
    const large = (kind: "base-frame" | "door") => madePart(kind, "card", 190, 150);
    const pattern = madePattern({
      window: madeWindow({
        frame: large("base-frame"),
        door: large("door"),
        glazing: madePart("glazing", "acetate", 190, 281, { count: 2 }),
      }),
    });
    expect(one({ pattern }, "card")).toMatchObject({
      quantity: 3,
      unit: "sheet",
      reason: { kind: "card", sheet: "A4", tooLarge: [], gauge: 1, lines: 2, window: 2 },
    });
    expect(one({ pattern }, "acetate")).toMatchObject({
      quantity: 2,
      reason: { kind: "acetate", sheet: "A4", tooLarge: [] },
    });
  });

  it.each([
    ["first size that takes all", [SMALL, A4], "A4"],
    ["first of two that do", [A4, CRAFT], "A4"],
  ])("are counted on the %s", (_, sheets, sheet) => {
    expect(one({ kit: { sheets } }, "card").reason).toMatchObject({ sheet, tooLarge: [], window: 1 });
  });

  // By hand: the small sheet's field is 124 mm square: the holder of 150 mm lies on none, frame and door on one each;
  // tabs and motifs beside them, and one more for the gauge.
  it("count one for each part that no size takes, on the first size", () => {
    const card = one({ kit: { sheets: [SMALL, { ...SMALL, name: "smaller" }] } }, "card");
    expect(card.reason).toMatchObject({ sheet: "small", tooLarge: [WINDOWED.window!.holder] });
    expect(card.reason).toMatchObject({ window: 3 });
    expect(card.quantity).toBe(4);
  });
});

// By hand: tape runs twice round the frame's 440 mm; string is 130 mm; bought to the next 0.1 m or quarter foot (76.2 mm).
describe("lengths", () => {
  it.each([
    ["mm", 0, 0.9, 0.2, "m", 0.88],
    ["mm", 0.1, 1, 0.2, "m", 0.968],
    ["mm", 0.35, 1.2, 0.2, "m", 1.188],
    ["mm", 0.6, 1.5, 0.3, "m", 1.408],
    ["in", 0, 3, 0.5, "ft", 880 / 304.8],
    ["in", 0.2, 3.5, 0.75, "ft", 1056 / 304.8],
  ] as const)("of a kit in %s with waste %d", (units, waste, tape, string, unit, exact) => {
    const bought = one({ kit: { units, waste } }, "tape");
    expect(bought).toMatchObject({ quantity: tape, unit, reason: { kind: "tape", frame: 440, waste } });
    expect(bought.exact).toBeCloseTo(exact, 12);
    expect(one({ kit: { units, waste } }, "string")).toMatchObject({
      quantity: string,
      unit,
      reason: { kind: "string", waste },
    });
  });
});

describe("a kit's own supplies", () => {
  it("take the place of a computed one of that id", () => {
    const rolls = own("Double-Sided Tape", { id: "tape", quantity: 2, unit: "rolls", price: 3.5 });
    expect(one({ kit: { supplies: [rolls], prices: { tape: 9 } } }, "tape")).toMatchObject({
      own: { item: "Double-Sided Tape", unit: "rolls" },
      quantity: 2,
      exact: 2,
      unit: undefined,
      price: 3.5,
    });
  });

  it("follow the computed materials where they are new, before the tools", () => {
    const supplies = [own("moss", { quantity: 3, price: 1.25 }), own("love", { unit: "each", unitId: "each" })];
    const list = listOf({ kit: { supplies } });
    const at = list.findIndex(({ own: named }) => named?.item === "moss");
    expect(list[at - 1]).toMatchObject({ kind: "material", id: "button" });
    expect(list.slice(at, at + 2)).toEqual([
      {
        kind: "material",
        id: undefined,
        own: { item: "moss", unit: "handfuls" },
        quantity: 3,
        exact: 3,
        unit: undefined,
        reason: undefined,
        price: 1.25,
      },
      {
        kind: "material",
        id: undefined,
        own: { item: "love", unit: "each" },
        quantity: 1,
        exact: 1,
        unit: "each",
        reason: undefined,
        price: undefined,
      },
    ]);
    expect(list[at + 2]).toMatchObject({ kind: "tool", id: "boneFolder" });
  });

  it("keep both of two that are named alike, and the second of two for one computed", () => {
    const ribbons = [own("ribbon"), own("Ribbon"), own("card", { id: "card" }), own("more card", { id: "card" })];
    const items = listOf({ kit: { supplies: ribbons } }).flatMap(({ own: named }) => named?.item ?? []);
    expect(items).toEqual(["card", "ribbon", "Ribbon", "more card"]);
  });

  // By hand: 10 sheets at 0.40; in another unit the kit's price is not theirs.
  it.each([
    ["sheets", { unitId: "sheet" }, 4, undefined],
    ["sheets at a price of their own", { unitId: "sheet", price: 3 }, 3, undefined],
    ["packs", { unit: "packs" }, undefined, { item: "card", unit: "packs" }],
    ["packs at a price of their own", { unit: "packs", price: 5 }, 5, { item: "card", unit: "packs" }],
  ] as [string, Partial<OwnSupply>, number | undefined, object | undefined][])(
    "of another quantity cost that quantity: %s",
    (_, changes, price, named) => {
      const supplies = [own("card", { id: "card", quantity: 10, ...changes })];
      const card = one({ kit: { supplies, prices: { card: 0.4 } } }, "card");
      expect(card).toMatchObject({ quantity: 10, exact: 10, reason: { kind: "card" } });
      expect([card.price, card.own]).toEqual([price, named]);
    },
  );

  it("have no price where neither kit nor author states one", () => {
    expect(one({ kit: { supplies: [own("card", { id: "card", unitId: "sheet" })] } }, "card").price).toBeUndefined();
  });

  it("do not list a tool a second time", () => {
    const knife = own("Craft knife", { id: "knife", unitId: "each", price: 6 });
    expect(all({ kit: { supplies: [knife] } }, "knife")).toMatchObject([{ kind: "tool", price: 6, own: undefined }]);
  });
});

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

  // By hand, each price times its quantity above: two sheets of card, 0.9 m of tape, 0.2 m of string, 8 dots.
  it("are for the whole quantity to a hundredth, and the cost is their sum", () => {
    const list = listOf({ kit: { prices, light: LIGHT, supplies: [own("moss", { price: 1.25 })] } });
    const priced = list.flatMap(({ id, price }) => (price === undefined ? [] : [[id ?? "moss", price]]));
    expect(priced).toEqual([
      ["book", 2],
      ["card", 0.6],
      ["acetate", 1.2],
      ["blades", 0.45],
      ["glueDots", 0.16],
      ["light", 2.4],
      ["cells", 1.1],
      ["tape", 0.72],
      ["string", 0.1],
      ["button", 0.25],
      ["moss", 1.25],
    ]);
    expect(costOf(list)).toBeCloseTo(10.23, 9);
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
