import { describe, expect, it } from "vitest";
import { classKit, suppliesLeft, workLeft } from "../../../src/core/class/class-kit.ts";
import { type FittingSeat, fitSeats, isCutting } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { scheduleOf, seatTime } from "../../../src/core/class/schedule.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { effortOf } from "../../../src/core/plan/effort.ts";
import { workOf } from "../../../src/core/steps/work.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { readFixtureClass } from "./made-class.ts";

const PLAN = readFixtureClass();
const { fitting } = fitSeats(PLAN.seats, PLAN.kits, PLAN);
/** Seat 2 makes the moon, with window and light. */
const moon = fitting.filter(isCutting).find(({ seat }) => seat.number === 2)!;

const stepsWith = ({ kit, pattern, counts }: FittingSeat<Pattern>, ready: KitClass["ready"]): string[] =>
  workLeft(workOf(kit, pattern, counts), ready).map(({ id }) => id);
const suppliesWith = ({ kit, pattern, counts }: FittingSeat<Pattern>, ready: KitClass["ready"]) =>
  suppliesLeft(suppliesOf(kit, pattern, counts), workOf(kit, pattern, counts), ready);

describe("classKit(kit, plan, pace)", () => {
  it.each([[[]], [["scores"]], [["parts"]], [["scores", "parts"]]] as const)(
    "with %j ready takes the time that the schedule has for every seat",
    (ready) => {
      const plan = { ...PLAN, ready };
      for (const { fit, minutes } of scheduleOf(plan, fitting)) {
        const { rates } = classKit(fit.kit, plan, fit.seat.pace);
        expect(effortOf(fit.counts, rates).minutes).toBeCloseTo(minutes, 6);
      }
    },
  );

  // By its own sum: how many of each, at the kit's own seconds, times the pace; half of the time for parts that are cut.
  it("takes as long as its counts do", () => {
    const { counts, kit, seat } = moon;
    const { rates } = kit;
    const seconds =
      counts.leaves * rates.leaf +
      counts.scores * rates.score +
      counts.marks * rates.mark +
      counts.cuts * rates.cut +
      counts.folds * rates.fold +
      counts.checks * rates.check +
      counts.tacks * rates.tack +
      counts.notches * rates.notch +
      counts.parts * rates.part * 0.5;
    const own = classKit(kit, { ...PLAN, ready: ["parts"], fittingShare: 0.5 }, seat.pace);
    expect(seat.pace).toBe(1.1);
    expect(effortOf(counts, own.rates).minutes).toBeCloseTo((seconds / 60) * 1.1, 6);
  });

  it("has the class's sheets and waste, and no price of its author's", () => {
    const kit = classKit({ ...moon.kit, prices: { card: 3 } }, { ...PLAN, waste: 0.3 }, 1);
    expect(kit).toMatchObject({ waste: 0.3, prices: {} });
    expect(kit.sheets.map(({ name }) => name)).toEqual(["A4", "12 × 12 in"]);
    expect(kit.supplies.every(({ price }) => price === undefined)).toBe(true);
  });
});

describe("seatTime(plan, seat)", () => {
  it("is that of the schedule, and none for a seat whose book does not carry its kit", () => {
    for (const { fit, minutes, short } of scheduleOf(PLAN, fitting))
      expect(seatTime(PLAN, fit.seat)).toEqual({ minutes, short });
    expect(seatTime(PLAN, PLAN.seats.find(({ number }) => number === 6)!)).toBeUndefined();
  });
});

describe("workLeft(work, ready)", () => {
  it("has no step that is ready: no gauge where lines are pressed, no cutting where parts are cut", () => {
    const all = stepsWith(moon, []);
    expect(all).toEqual(expect.arrayContaining(["gauge", "score", "cut"]));
    expect(stepsWith(moon, ["scores"])).toEqual(all.filter((id) => id !== "gauge" && id !== "score"));
    expect(stepsWith(moon, ["parts"])).toEqual(all.filter((id) => id !== "cut"));
  });
});

describe("suppliesLeft(supplies, work, ready)", () => {
  const ids = (ready: KitClass["ready"]) => suppliesWith(moon, ready).map(({ id }) => id);

  it("leaves out what only ready steps use, and what parts are cut from", () => {
    expect(ids([])).toEqual(expect.arrayContaining(["awl", "acetate", "packing"]));
    expect(ids(["parts"])).not.toContain("acetate");
    expect(ids(["scores"])).not.toEqual(expect.arrayContaining(["packing"]));
    expect(ids(["scores", "parts"])).toEqual(ids([]).filter((id) => !["acetate", "awl", "packing"].includes(id!)));
  });

  it("keeps one sheet of card, for the gauge and small pieces", () => {
    const card = (ready: KitClass["ready"]) => suppliesWith(moon, ready).find(({ id }) => id === "card");
    expect(card([])!.quantity).toBeGreaterThan(1);
    expect(card(["parts"])).toMatchObject({ quantity: 1, exact: 1, reason: { window: 0, tooLarge: [] } });
  });
});
