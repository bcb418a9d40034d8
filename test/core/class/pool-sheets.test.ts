import { describe, expect, it } from "vitest";
import type { SeatPart } from "../../../src/core/class/class-sheets.ts";
import type { SheetLayout } from "../../../src/core/packing/lay-out.ts";
import { shoppingNote } from "../../../src/words/shopping.ts";
import { madePart } from "../plan/made-pattern.ts";
import { line, lines, poolOf, SEATS, shares } from "./pooled.ts";

const A4 = { name: "A4", width: 210, height: 297 };

describe("sheets in poolSupplies(plan, seats, layouts)", () => {
  const seatPart = (seat: number, ...[kind, ...rest]: Parameters<typeof madePart>): SeatPart => ({
    ...madePart(kind, ...rest),
    seat,
  });
  const frame = seatPart(1, "base-frame", "card", 100, 50);
  const tabs = seatPart(2, "closure-tab", "card", 30, 20, { count: 2 });
  const door = seatPart(2, "door", "card", 40, 60);
  const huge = seatPart(3, "holder", "card", 400, 10);
  const glazing = seatPart(1, "glazing", "acetate", 90, 40);
  const guide = seatPart(1, "decoration-guide", "paper", 90, 40);
  const laid = (material: SeatPart["material"], number: number, ...parts: readonly SeatPart[]) => ({
    material,
    number,
    parts,
    places: [],
    paths: [],
  });
  const layouts: SheetLayout<SeatPart>[] = [
    {
      sheet: A4,
      sheets: [
        laid("card", 1, frame, tabs),
        laid("card", 2, tabs, door),
        laid("acetate", 1, glazing),
        laid("paper", 1, guide),
      ],
      tooLarge: [],
    },
    { sheet: { name: "A3", width: 297, height: 420 }, sheets: [], tooLarge: [huge] },
  ];

  it("are those of the layout, each size by itself, and one for each part that no size takes", () => {
    const card = lines(poolOf({}, SEATS, layouts), "card");
    expect(card.map(({ sheet, need, unit, kind }) => [sheet, need, unit, kind])).toEqual([
      ["A4", 2, "sheet", "material"],
      ["A3", 1, "sheet", "material"],
    ]);
    expect(card.map(({ reason }) => reason)).toEqual([
      { kind: "packed", tooLarge: [] },
      { kind: "packed", tooLarge: [huge] },
    ]);
    expect(line(poolOf({}, SEATS, layouts), "acetate")).toMatchObject({
      need: 1,
      reason: { kind: "packed", tooLarge: [] },
    });
  });

  it("are told by colour where a kit states its card", () => {
    const teal = { name: "teal", colour: "#3f6b70" };
    const sheets = [laid("card", 1, frame), { ...laid("card", 2, door), card: teal }];
    const [card] = lines(poolOf({}, SEATS, [{ sheet: A4, sheets, tooLarge: [] }]), "card");
    expect(card!.need).toBe(2);
    expect(card!.reason).toEqual({
      kind: "packed",
      tooLarge: [],
      colours: [
        { colour: undefined, count: 1 },
        { colour: "teal", count: 1 },
      ],
    });
    expect(shoppingNote(card!, "mm")).toBe("packed over all seats: 1 of any colour, 1 teal");
  });

  // By hand: 100 × 50 for seat 1; twice 30 × 20 and once 40 × 60 for seat 2, each part counted once though it lies on two sheets.
  it("are shared by the areas of all parts of a seat, as often as they are cut", () => {
    const [card, large] = lines(poolOf({}, SEATS, layouts), "card");
    expect(shares(card!)).toEqual([
      [1, 5000],
      [2, 1200 + 2400],
    ]);
    expect(shares(large!)).toEqual([[3, 4000]]);
  });

  it("cost what their size costs, and else what all do", () => {
    const sheetPrices = [
      { sheet: "A3", card: 0.9, acetate: undefined },
      { sheet: "A4", card: undefined, acetate: 1.5 },
    ];
    const list = poolOf({ prices: { card: 0.35, acetate: 0.8 }, sheetPrices }, SEATS, layouts);
    expect(lines(list, "card").map(({ worth }) => worth)).toEqual([0.7, 0.9]);
    expect(line(list, "acetate").worth).toBe(1.5);
  });

  // By hand: a gauge of 30 × 100 that goes round three seats is 1000 for each.
  it("share a gauge that goes round in equal parts", () => {
    const gauge = { ...seatPart(1, "scoring-gauge", "card", 30, 100), sharedBy: [1, 2, 3] };
    const layout = { sheet: A4, sheets: [laid("card", 1, gauge, frame)], tooLarge: [] };
    const [card] = lines(poolOf({}, SEATS, [layout]), "card");
    expect(shares(card!)).toEqual([
      [1, 6000],
      [2, 1000],
      [3, 1000],
    ]);
  });

  it("cost the class's price for each, and paper nothing", () => {
    const list = poolOf({ prices: { card: 0.35 } }, SEATS, layouts);
    expect(lines(list, "card").map(({ worth, toPay }) => [worth, toPay])).toEqual([
      [0.7, 0.7],
      [0.35, 0.35],
    ]);
    expect(line(list, "paper").worth).toBeUndefined();
    expect(line(list, "acetate").worth).toBeUndefined();
  });
});
