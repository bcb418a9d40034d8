import { describe, expect, it } from "vitest";
import type { OwnSupply } from "../../../src/core/kit/kit.ts";
import { all, listOf, one, own } from "./made-supplies.ts";

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
    expect(list[at - 1]).toMatchObject({ kind: "material", id: "spacers" });
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
