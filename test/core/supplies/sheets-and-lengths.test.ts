import { describe, expect, it } from "vitest";
import { supplyNote } from "../../../src/words/supplies.ts";
import { madePart, madePattern, madeWindow } from "../plan/made-pattern.ts";
import { one, WINDOWED } from "./made-supplies.ts";

const A4 = { name: "A4", width: 210, height: 297 };
const CRAFT = { name: "12 × 12 in", width: 304.8, height: 304.8 };
const SMALL = { name: "small", width: 140, height: 140 };

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

  // By hand: frame and door in one colour, the holder in any and the motifs in another lie on a sheet each.
  it("are told by colour where the kit states colours", () => {
    const teal = { card: { name: "teal", colour: "#3f6b70" } };
    const [motif] = madeWindow().motifs;
    const pattern = madePattern({
      window: madeWindow({
        frame: madePart("base-frame", "card", 100, 120, teal),
        door: madePart("door", "card", 100, 100, teal),
        tab: madePart("closure-tab", "card", 30, 20, teal),
        motifs: [{ ...motif!, card: { name: "black", colour: "#2b2930" } }],
      }),
    });
    const card = one({ pattern }, "card");
    expect(card.quantity).toBe(4);
    expect(card.reason).toMatchObject({
      window: 3,
      colours: [
        { colour: "teal", count: 1 },
        { colour: undefined, count: 1 },
        { colour: "black", count: 1 },
      ],
    });
    expect(supplyNote(card, "mm")).toMatch(
      /^A4, 250–300 g\/m²: .*; for the window and motifs 1 teal, 1 of any colour, 1 black$/,
    );
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
