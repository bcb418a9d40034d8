import { describe, expect, it } from "vitest";
import type { FittingSeat } from "../../../src/core/class/fit-seats.ts";
import { LIGHT, litKit, madeKit } from "../kit/made-kit.ts";
import { madePattern } from "../plan/made-pattern.ts";
import { own } from "../supplies/made-supplies.ts";
import { madeSeat } from "./made-seats.ts";
import { line, lines, poolOf, SEATS, shares, withOwn } from "./pooled.ts";

describe("what poolSupplies(plan, seats, layouts) counts", () => {
  // By hand: a blade for every 250 cuts begun, one more for a window; a dot a tack, two more for a button; raised motifs take none.
  it("adds what each seat needs, and tells how much each has of it", () => {
    const list = poolOf();
    expect(line(list, "blades")).toMatchObject({ need: 2 + 2 + 2, unit: "each", kind: "material" });
    expect(line(list, "glueDots").need).toBe(4 + 4);
    expect(shares(line(list, "glueDots"))).toEqual([
      [2, 4],
      [3, 4],
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
    const kinds = poolOf({}, [SEATS[0]!, withOwn(SEATS[1]!, own("moss"))]).map(({ kind }) => kind);
    expect(kinds).toEqual([...kinds.filter((kind) => kind === "material"), ...kinds.filter((kind) => kind === "tool")]);
    expect(new Set(kinds).size).toBe(2);
  });

  it("lists no card or acetate but what is packed", () => {
    expect(poolOf().filter(({ id }) => id === "card" || id === "acetate" || id === "paper")).toEqual([]);
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
      withOwn(SEATS[0]!, own("moss", { quantity: 2, price: 1.25 })),
      withOwn(SEATS[1]!, own("moss", { quantity: 3, price: 0.5 })),
      withOwn(SEATS[2]!, own("moss")),
    ];
    const moss = poolOf({}, seats).find(({ own }) => own?.item === "moss")!;
    expect(moss).toMatchObject({ need: 6, worth: 1.75 });
    expect(shares(moss).map(([, share]) => share)).toEqual([2, 3, 1]);
    const [alone] = poolOf({}, seats.slice(1, 2)).filter(({ own }) => own?.item === "moss");
    expect(alone!.worth).toBe(0.5);
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
    const rolls = own("tape", { id: "tape", quantity: 2, unit: "rolls" });
    const tape = lines(poolOf({}, [SEATS[1]!, withOwn(SEATS[2]!, rolls)]), "tape");
    expect(tape.map(({ unit, own, need }) => [unit ?? own!.unit, need])).toEqual([
      ["m", 0.8],
      ["rolls", 2],
    ]);
  });

  it("what kits count in units of their own", () => {
    const moss = (unit: string, quantity: number) => own("moss", { unit, quantity });
    const list = poolOf({}, [withOwn(SEATS[0]!, moss("bags", 1)), withOwn(SEATS[1]!, moss("handfuls", 1.5))]);
    expect(list.filter(({ own }) => own?.item === "moss").map(({ own, need }) => [own!.unit, need])).toEqual([
      ["bags", 1],
      ["handfuls", 1.5],
    ]);
  });

  it("not what differs in capitals only", () => {
    const moss = poolOf({}, [withOwn(SEATS[0]!, own("Moss", { quantity: 3 })), withOwn(SEATS[1]!, own("moss"))]);
    expect(moss.filter(({ own }) => own !== undefined).map(({ id, need }) => [id, need])).toEqual([[undefined, 4]]);
  });

  it("not the sizes of books: each seat brings its own", () => {
    const other = madeSeat(2, { pattern: madePattern({ book: madeKit({ book: { leaves: 90 } }).book }) });
    expect(line(poolOf({}, [SEATS[0]!, other]), "book").need).toBe(2);
  });

  it("has no more of a tool than there are where seats share it", () => {
    expect(line(poolOf({ tools: { mat: 2, awl: 9 } }), "mat").need).toBe(2);
    expect(line(poolOf({ tools: { mat: 2, awl: 9 } }), "awl").need).toBe(3);
  });
});
