import { describe, expect, it } from "vitest";
import { classLayouts, type SeatPart, seatParts, seatsOfPart } from "../../../src/core/class/class-sheets.ts";
import { namedSheets, partCounts } from "../../../src/core/class/preparation.ts";
import type { LaidSheet } from "../../../src/core/packing/lay-out.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madePart, madePattern, madeWindow } from "../plan/made-pattern.ts";
import { madeSeat } from "./made-seats.ts";

const A4 = { name: "A4", width: 210, height: 297 };
const CRAFT = { name: "12 × 12 in", width: 304.8, height: 304.8 };

const of = (seat: number, part: ReturnType<typeof madePart>): SeatPart => ({ ...part, seat });

describe("seatParts(seats)", () => {
  const tall = madeSeat(7, {
    kit: madeKit({ gaugeLines: [10, 42], book: { leafHeight: 260 } }),
    pattern: madePattern({ window: madeWindow() }),
  });
  const parts = seatParts([madeSeat(3), tall]);

  it("is every part of every window with its seat, each seat's gauge first", () => {
    expect(parts.map(({ seat, kind }) => `${seat} ${kind}`)).toEqual([
      "3 scoring-gauge",
      "7 scoring-gauge",
      "7 base-frame",
      "7 glazing",
      "7 door",
      "7 closure-tab",
      "7 decoration-guide",
      "7 holder",
      "7 motif",
    ]);
  });

  // By hand: 14 mm to hold it beyond the deepest line; as high as the leaf, but at most a sheet's 203 mm.
  it("cuts one gauge of card for each, 14 mm wider than its deepest line", () => {
    const gauges = parts.filter(({ kind }) => kind === "scoring-gauge");
    const box = (width: number, height: number) => [
      [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
    ];
    expect(gauges.map(({ outlines }) => outlines)).toEqual([box(34, 120), box(56, 203)]);
    for (const gauge of gauges)
      expect(gauge).toMatchObject({
        id: "scoring-gauge",
        material: "card",
        count: 1,
        frame: "own",
        scores: [],
        marks: [],
      });
  });
});

describe("the gauges of seatParts(seats)", () => {
  const shared = (...heights: readonly number[]) =>
    seatParts(heights.map((leafHeight, i) => madeSeat(i + 3, { kit: madeKit({ book: { leafHeight } }) })));

  // By hand: three books of one kit, whose lines are the same; the lowest is 90 mm high.
  it("are one for seats whose lines are the same, as high as the lowest book", () => {
    const gauges = shared(120, 90, 260);
    expect(gauges.map(({ seat, sharedBy }) => [seat, sharedBy])).toEqual([[3, [3, 4, 5]]]);
    expect(Math.max(...gauges[0]!.outlines[0]!.map(([, y]) => y))).toBe(90);
    expect(seatsOfPart(gauges[0]!)).toEqual([3, 4, 5]);
  });

  it("are each seat's own where kit or depths differ", () => {
    const [one] = madeKit().levels;
    const seats = [
      madeSeat(1),
      madeSeat(2, { kit: madeKit({ slug: "another" }) }),
      madeSeat(3, { kit: madeKit({ levels: [{ ...one!, depth: 12 }, ...madeKit().levels.slice(1)] }) }),
      madeSeat(4, { kit: madeKit({ gaugeLines: [11, 22] }) }),
    ];
    expect(seatParts(seats).map(({ seat, sharedBy }) => [seat, sharedBy])).toEqual(
      [1, 2, 3, 4].map((n) => [n, undefined]),
    );
  });
});

describe("classLayouts(parts, sheets)", () => {
  it("lays the parts of all seats together, on the first size that takes them", () => {
    const wide = of(2, madePart("base-frame", "card", 250, 250));
    const small = [1, 2].map((seat) => of(seat, madePart("door", "card", 60, 60)));
    const layouts = classLayouts([...small, wide], [A4, CRAFT]);
    expect(
      layouts.map(({ sheet, sheets }) => [sheet.name, sheets.map(({ parts }) => parts.map(({ seat }) => seat))]),
    ).toEqual([
      ["A4", [[1, 2]]],
      ["12 × 12 in", [[2]]],
    ]);
  });
});

describe("namedSheets(layouts) and partCounts(parts, sheets)", () => {
  const tabs = [1, 2].map((seat) => of(seat, madePart("closure-tab", "card", 30, 20, { count: 2 })));
  const gull = of(1, madePart("motif", "card", 20, 20, { id: "motif-gull", motif: "gull", count: 3 }));
  const fish = of(2, madePart("motif", "card", 20, 20, { id: "motif-fish", motif: "fish" }));
  const acetate = of(2, madePart("motif", "acetate", 20, 20, { id: "motif-fish", motif: "fish" }));
  const laid = (
    material: SeatPart["material"],
    number: number,
    ...parts: readonly SeatPart[]
  ): LaidSheet<SeatPart> => ({
    material,
    number,
    parts,
    places: [],
  });
  const layouts = [
    { sheet: A4, sheets: [laid("card", 1, tabs[0]!, gull), laid("card", 2, gull, fish)], tooLarge: [] },
    { sheet: CRAFT, sheets: [laid("card", 1, tabs[1]!), laid("acetate", 1, acetate)], tooLarge: [] },
  ];
  const sheets = namedSheets(layouts);

  it("names sheets by material, size and number", () => {
    expect(sheets.map(({ name, size }) => [name, size.name])).toEqual([
      ["card-a4-1", "A4"],
      ["card-a4-2", "A4"],
      ["card-12x12-in-1", "12 × 12 in"],
      ["acetate-12x12-in-1", "12 × 12 in"],
    ]);
    expect(sheets[2]!.sheet).toBe(layouts[1]!.sheets[0]);
  });

  it("counts pieces of one kind and material over all seats, and tells their sheets", () => {
    expect(partCounts([tabs[0]!, gull, tabs[1]!, fish, acetate], sheets)).toEqual([
      {
        kind: "closure-tab",
        motif: undefined,
        material: "card",
        count: 4,
        seats: [1, 2],
        sheets: ["card-a4-1", "card-12x12-in-1"],
      },
      { kind: "motif", motif: "gull", material: "card", count: 3, seats: [1], sheets: ["card-a4-1", "card-a4-2"] },
      { kind: "motif", motif: "fish", material: "card", count: 1, seats: [2], sheets: ["card-a4-2"] },
      { kind: "motif", motif: "fish", material: "acetate", count: 1, seats: [2], sheets: ["acetate-12x12-in-1"] },
    ]);
  });
});
