import { describe, expect, it } from "vitest";
import { bagsOf } from "../../../src/core/class/bags.ts";
import type { SeatPart } from "../../../src/core/class/class-sheets.ts";
import { madePart } from "../plan/made-pattern.ts";

const A4 = { name: "A4", width: 210, height: 297 };
const of = (seat: number, kind: SeatPart["kind"], changes: Partial<SeatPart> = {}): SeatPart => ({
  ...madePart(kind, "card", 20, 20),
  seat,
  ...changes,
});

describe("bagsOf(parts, sheets)", () => {
  const gauge = of(2, "scoring-gauge", { sharedBy: [2, 5] });
  const [door, tabs, huge] = [of(2, "door"), of(5, "closure-tab", { count: 2 }), of(5, "holder")];
  const sheet = (name: string, ...parts: readonly SeatPart[]) => ({
    name,
    size: A4,
    sheet: { material: "card" as const, number: 1, parts, places: [] },
  });
  const bags = bagsOf([gauge, door, tabs, huge], [sheet("card-a4-1", gauge, tabs), sheet("card-a4-2", tabs, door)]);

  it("tells for each seat which parts lie in its bag, and from which sheets", () => {
    expect(bags.map(({ seat, parts }) => [seat, parts.map(({ part, sheets }) => [part.kind, sheets])])).toEqual([
      [
        2,
        [
          ["scoring-gauge", ["card-a4-1"]],
          ["door", ["card-a4-2"]],
        ],
      ],
      [
        5,
        [
          ["closure-tab", ["card-a4-1", "card-a4-2"]],
          ["holder", []],
        ],
      ],
    ]);
  });

  it("says whose bag holds a gauge that goes round", () => {
    expect(bags.map(({ gaugeWith }) => gaugeWith)).toEqual([undefined, 2]);
  });
});
