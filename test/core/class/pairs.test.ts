import { describe, expect, it } from "vitest";
import { seatPairs } from "../../../src/core/class/pairs.ts";
import { scheduleOf } from "../../../src/core/class/schedule.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madeClass, madeSeat, session } from "./made-seats.ts";

const STILL = { leaf: 0, score: 0, mark: 0, cut: 0, fold: 0, check: 0, tack: 0, notch: 0, part: 0, first: 2 };
const plan = madeClass({ sessions: [session(60), session(80, 20)] });

/** Seats with so many minutes of score lines and nothing else. */
const pairs = (...minutes: readonly number[]) =>
  seatPairs(
    plan,
    scheduleOf(
      plan,
      minutes.map((score, i) => madeSeat(i + 1, { kit: madeKit({ rates: STILL }), byStage: { score } })),
    ),
  );

describe("seatPairs(plan, schedules)", () => {
  // By hand: 40, 70, 90 and 200 minutes; the second is done in the second session, whose work begins in its 5th minute.
  it("sets the quickest beside the slowest, and says when it is done", () => {
    expect(pairs(200, 70, 40, 90)).toEqual([
      { helper: 3, helped: 1, ahead: 160, from: { session: 0, minute: 40 } },
      { helper: 2, helped: 4, ahead: 20, from: { session: 1, minute: 15 } },
    ]);
  });

  it("leaves out who is about as quick, and the one in the middle", () => {
    expect(pairs(60, 69.9)).toEqual([]);
    expect(pairs(60, 70)).toHaveLength(1);
    expect(pairs(60, 65, 70)).toEqual([{ helper: 1, helped: 3, ahead: 10, from: { session: 0, minute: 60 } }]);
    expect(pairs(50)).toEqual([]);
    expect(pairs()).toEqual([]);
  });

  it("sets nobody without a knife beside a blade, however quick", () => {
    const corners = madeKit({ rates: STILL, fit: { foldStyle: "corner" } });
    const seats = [20, 40, 60, 90].map((score, i) =>
      madeSeat(i + 1, { kit: i % 2 === 0 ? corners : madeKit({ rates: STILL }), byStage: { score } }),
    );
    const found = seatPairs(plan, scheduleOf(plan, seats)).map(({ helper, helped }) => [helper, helped]);
    expect(found).toEqual([
      [2, 4],
      [1, 3],
    ]);
  });

  it("has no moment where the helper is not done in class", () => {
    expect(pairs(130, 200)[0]!.from).toBeUndefined();
  });
});
