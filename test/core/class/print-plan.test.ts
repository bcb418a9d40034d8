import { describe, expect, it } from "vitest";
import { type CountedFile, printPlanOf } from "../../../src/core/class/print-plan.ts";

const seats = (count: number) => Array.from({ length: count }, (_, i) => ({ number: i + 1, kit: undefined }));

const FILES: readonly CountedFile[] = [
  { file: "to-cut-out", pages: 21 },
  { file: "to-read", pages: 176 },
  { file: "teacher", pages: 17 },
  { file: "measuring-card", pages: 1 },
];

describe("printPlanOf(plan, files)", () => {
  // By hand: 5 seats without a book take 3 pages of two cards; 17 pages on both sides are 9 sheets; 3 + 17 + 176 + 21 sides at 0.05.
  it("says in order what is printed how often, on what, and what it costs", () => {
    const plan = printPlanOf({ awaiting: seats(5), pagePrice: 0.05 }, FILES);
    expect(
      plan.rows.map(({ file, copies, bothSides, stock, sides, sheets, cost }) => [
        file,
        ...[copies, bothSides, stock],
        ...[sides, sheets, cost],
      ]),
    ).toEqual([
      ["measuring-card", 3, false, "paper", 3, 3, 0.15],
      ["teacher", 1, true, "paper", 17, 9, 0.85],
      ["to-read", 1, true, "paper", 176, 88, 8.8],
      ["to-cut-out", 1, false, "card", 21, 21, 1.05],
    ]);
    expect([plan.sides, plan.paper, plan.card, plan.cost]).toEqual([217, 100, 21, 10.85]);
  });

  it("leaves out what is not there, and states no cost without a price", () => {
    const plan = printPlanOf({ awaiting: [], pagePrice: undefined }, [
      ...FILES.slice(2),
      { file: "to-cut-out", pages: 0 },
    ]);
    expect(plan.rows.map(({ file, cost }) => [file, cost])).toEqual([["teacher", undefined]]);
    expect(plan.cost).toBeUndefined();
    expect(printPlanOf({ awaiting: [], pagePrice: 0 }, FILES).cost).toBe(0);
  });
});
