import { describe, expect, it } from "vitest";
import { frameDrying } from "../../../src/core/class/drying.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { scheduleOf } from "../../../src/core/class/schedule.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madePattern, madeWindow } from "../plan/made-pattern.ts";
import { madeClass, madeSeat, session } from "./made-seats.ts";

const STILL = { leaf: 0, score: 0, mark: 0, cut: 0, fold: 0, check: 0, tack: 0, notch: 0, part: 0, first: 2 };

/**
 * By hand: 20 minutes of lines, then 40 of the window, of which 30 to cut it out and 10 for its six steps. The frame is the second, so
 * it is glued when 20 + 30 + 3 1/3 minutes are done.
 */
function drying(plan: Partial<KitClass>, frame = 720, window = true) {
  const fit = madeSeat(1, {
    kit: madeKit({ rates: STILL, drying: { glue: 30, frame } }),
    pattern: madePattern(window ? { window: madeWindow() } : {}),
    byStage: { score: 20, part: window ? 40 : 0 },
  });
  const made = madeClass(plan);
  return frameDrying(made, scheduleOf(made, [fit])[0]!);
}

const evening = (minutes: number, date?: string) => session(minutes, 0, { date, starts: "18:30" });

describe("frameDrying(plan, schedule)", () => {
  it("is nothing without a window, or where its glue holds at once", () => {
    expect(drying({}, 720, false)).toBeUndefined();
    expect(drying({}, 0)).toBeUndefined();
  });

  it.each<[string, Partial<KitClass>, number, number | "home", number | "home"]>([
    ["glues in the first and hangs in the second session", { sessions: [evening(60), evening(60)] }, 720, 0, 1],
    ["glues in the second where the first is too short", { sessions: [evening(50), evening(60)] }, 720, 1, "home"],
    ["hangs at home after the only session", { sessions: [evening(60)] }, 720, 0, "home"],
    ["hangs in the same session where the glue dries in it", { sessions: [evening(60)] }, 6, 0, 0],
    ["does not where it dries just after it", { sessions: [evening(60)] }, 7, 0, "home"],
    ["glues at home where no session is long enough", { sessions: [evening(30), evening(20)] }, 720, "home", "home"],
    ["glues earlier where the parts are ready", { sessions: [evening(24), evening(9)], ready: ["parts"] }, 720, 0, 1],
    [
      "waits for a session that is late enough",
      { sessions: [evening(60, "2027-02-04"), evening(60, "2027-02-04"), evening(60, "2027-02-05")] },
      720,
      0,
      2,
    ],
  ])("%s", (_, plan, frame, glued, hung) => {
    expect(drying(plan, frame)).toEqual({ glued, hung, dries: frame });
  });
});
