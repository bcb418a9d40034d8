import { describe, expect, it } from "vitest";
import type { SeatPart } from "../../../src/core/class/class-sheets.ts";
import type { FittingSeat } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { poolSupplies } from "../../../src/core/class/pool.ts";
import type { PooledSupply } from "../../../src/core/class/pooled-supply.ts";
import type { OwnSupply } from "../../../src/core/kit/kit.ts";
import type { SheetLayout } from "../../../src/core/packing/lay-out.ts";
import { LIGHT, litKit, madeKit } from "../kit/made-kit.ts";
import { madePart, madePattern, madeWindow } from "../plan/made-pattern.ts";
import { madeClass, madeSeat } from "./made-seats.ts";

const A4 = { name: "A4", width: 210, height: 297 };

const windowed = (number: number, frameLength: number, stringLength: number): FittingSeat =>
  madeSeat(number, {
    pattern: madePattern({ window: madeWindow({ frameLength, stringLength }) }),
    counts: { parts: 9, tacks: 2, cuts: 100 },
  });

/** Seat 1 has neither window nor tacks, 2 and 3 have a window. */
const SEATS = [madeSeat(1, { counts: { cuts: 251 } }), windowed(2, 400, 120), windowed(3, 410, 130)];

const poolOf = (plan: Partial<KitClass> = {}, seats = SEATS, layouts: readonly SheetLayout<SeatPart>[] = []) =>
  poolSupplies(madeClass(plan), seats, layouts);
const lines = (list: readonly PooledSupply[], id: PooledSupply["id"]) => list.filter((one) => one.id === id);
const line = (list: readonly PooledSupply[], id: PooledSupply["id"]): PooledSupply => {
  const found = lines(list, id);
  if (found.length !== 1) throw new Error(`${found.length} lines ${id}`);
  return found[0]!;
};
const shares = (one: PooledSupply) => [...one.shares];

const ownSupply = (item: string, changes: Partial<OwnSupply> = {}): OwnSupply => ({
  id: undefined,
  item,
  quantity: 1,
  unit: "handfuls",
  unitId: undefined,
  price: undefined,
  ...changes,
});

function withOwn(seat: FittingSeat, ...supplies: readonly OwnSupply[]): FittingSeat {
  return { ...seat, kit: { ...seat.kit, supplies } };
}

describe("what poolSupplies(plan, seats, layouts) counts", () => {
  // By hand: a blade for every 250 cuts begun, one more for a window; a dot a tack, 8 more for a window.
  it("adds what each seat needs, and tells how much each has of it", () => {
    const list = poolOf();
    expect(line(list, "blades")).toMatchObject({ need: 2 + 2 + 2, unit: "each", kind: "material" });
    expect(line(list, "glueDots").need).toBe(10 + 10);
    expect(shares(line(list, "glueDots"))).toEqual([
      [2, 10],
      [3, 10],
    ]);
    expect(shares(line(list, "book"))).toEqual([
      [1, 1],
      [2, 1],
      [3, 1],
    ]);
    expect(line(list, "knife")).toMatchObject({ need: 3, kind: "tool" });
    expect(line(list, "button")).toMatchObject({
      need: 2,
      reason: { kind: "seats", seats: 2, of: { kind: "button" } },
    });
  });

  // By hand: twice 400 and 410 mm are 1.62 m; with a quarter for waste 2.025 m, to the next 0.1 m 2.1; apart 1.0 and 1.1.
  it.each([
    [0, 1.7, 0.8, 0.82, 0.3],
    [0.25, 2.1, 1, 1.025, 0.4],
  ])("adds lengths before it rounds them up, with waste %d", (waste, tape, first, second, string) => {
    const list = poolOf({ waste });
    expect(line(list, "tape")).toMatchObject({ need: tape, unit: "m", sheet: undefined });
    expect(shares(line(list, "tape"))).toEqual([
      [2, expect.closeTo(first, 12)],
      [3, expect.closeTo(second, 12)],
    ]);
    expect(line(list, "string").need).toBe(string);
  });

  // By hand: 1620 mm are 5.31 ft, to the next quarter 5.5.
  it("buys lengths by the quarter of a foot in inches, whatever a kit's units", () => {
    expect(line(poolOf({ units: "in" }), "tape")).toMatchObject({ need: 5.5, unit: "ft" });
  });

  it("lists materials before tools", () => {
    const kinds = poolOf({}, [SEATS[0]!, withOwn(SEATS[1]!, ownSupply("moss"))]).map(({ kind }) => kind);
    expect(kinds).toEqual([...kinds.filter((kind) => kind === "material"), ...kinds.filter((kind) => kind === "tool")]);
    expect(new Set(kinds).size).toBe(2);
  });

  it("lists no card or acetate but what is packed", () => {
    expect(poolOf().filter(({ id }) => id === "card" || id === "acetate" || id === "paper")).toEqual([]);
  });
});

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

  // By hand: 100 × 50 for seat 1; twice 30 × 20 and once 40 × 60 for seat 2, each part counted once though it lies on two sheets.
  it("are shared by the areas of all parts of a seat, as often as they are cut", () => {
    const [card, large] = lines(poolOf({}, SEATS, layouts), "card");
    expect(shares(card!)).toEqual([
      [1, 5000],
      [2, 1200 + 2400],
    ]);
    expect(shares(large!)).toEqual([[3, 4000]]);
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

describe("prices in poolSupplies(plan, seats, layouts)", () => {
  it("are the class's own for each, and none where it has none", () => {
    const list = poolOf({ prices: { button: 0.25, blades: 0.3, tape: 0.81 } });
    expect(line(list, "button").worth).toBe(0.5);
    expect(line(list, "blades").worth).toBe(1.8);
    // By hand: 1.7 m at 0.81 are 1.377.
    expect(line(list, "tape").worth).toBe(1.38);
    expect(line(list, "book").worth).toBeUndefined();
  });

  it("are the sum of what the kits state for their own supplies", () => {
    const seats = [
      withOwn(SEATS[0]!, ownSupply("moss", { quantity: 2, price: 1.25 })),
      withOwn(SEATS[1]!, ownSupply("moss", { quantity: 3, price: 0.5 })),
      withOwn(SEATS[2]!, ownSupply("moss")),
    ];
    const moss = poolOf({}, seats).find(({ own }) => own?.item === "moss")!;
    expect(moss).toMatchObject({ need: 6, worth: 1.75 });
    expect(shares(moss).map(([, share]) => share)).toEqual([2, 3, 1]);
  });
});

describe("what poolSupplies(plan, seats, layouts) keeps apart", () => {
  const lit = (number: number, light: object, cells?: string): FittingSeat =>
    madeSeat(number, { kit: litKit({ light: { ...LIGHT, ...light }, cells }) });

  it.each([
    ["of one size are one line", {}, [2]],
    ["of different widths are two", { diameter: 24 }, [1, 1]],
    ["of different heights are two", { height: 24 }, [1, 1]],
    ["that only stand elsewhere are one", { setback: 9 }, [2]],
  ])("lights %s", (_, changes, needs) => {
    expect(lines(poolOf({}, [lit(1, {}), lit(2, changes)]), "light").map(({ need }) => need)).toEqual(needs);
  });

  it("cells of different names", () => {
    const cells = lines(poolOf({}, [lit(1, {}, "CR2032"), lit(2, {}, "AAA"), lit(3, {}, "cr2032 ")]), "cells");
    expect(cells.map(({ own, need }) => [own!.item, need])).toEqual([
      ["CR2032", 2],
      ["AAA", 1],
    ]);
  });

  it("what is counted in different units", () => {
    const rolls = ownSupply("tape", { id: "tape", quantity: 2, unit: "rolls" });
    const tape = lines(poolOf({}, [SEATS[1]!, withOwn(SEATS[2]!, rolls)]), "tape");
    expect(tape.map(({ unit, own, need }) => [unit ?? own!.unit, need])).toEqual([
      ["m", 0.8],
      ["rolls", 2],
    ]);
  });

  it("what kits count in units of their own", () => {
    const moss = (unit: string, quantity: number) => ownSupply("moss", { unit, quantity });
    const list = poolOf({}, [withOwn(SEATS[0]!, moss("bags", 1)), withOwn(SEATS[1]!, moss("handfuls", 1.5))]);
    expect(list.filter(({ own }) => own?.item === "moss").map(({ own, need }) => [own!.unit, need])).toEqual([
      ["bags", 1],
      ["handfuls", 1.5],
    ]);
  });

  it("not what differs in capitals only", () => {
    const moss = poolOf({}, [
      withOwn(SEATS[0]!, ownSupply("Moss", { quantity: 3 })),
      withOwn(SEATS[1]!, ownSupply("moss")),
    ]);
    expect(moss.filter(({ own }) => own !== undefined).map(({ id, need }) => [id, need])).toEqual([[undefined, 4]]);
  });

  it("sizes of books, no: each seat brings its own", () => {
    const other = madeSeat(2, { pattern: madePattern({ book: madeKit({ book: { leaves: 90 } }).book }) });
    expect(line(poolOf({}, [SEATS[0]!, other]), "book").need).toBe(2);
  });
});
