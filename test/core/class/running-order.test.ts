import { describe, expect, it } from "vitest";
import { minuteOfWork, runningOrder, workUntilPause } from "../../../src/core/class/running-order.ts";
import { fc } from "../../seed.ts";
import { session } from "./made-seats.ts";

const order = (...of: Parameters<typeof session>) =>
  runningOrder(session(...of)).map(({ kind, from, until }) => [kind, from, until]);

describe("runningOrder(session)", () => {
  // By hand: 150 minutes, 20 aside (5 at first, 10 of pause, 5 at the end), 10 for the late: 120 of work, an hour before and after.
  it("settles in, works, pauses, works on, lets the late catch up, and tidies", () => {
    expect(order(150, 20, { buffer: 10 })).toEqual([
      ["settle", 0, 5],
      ["work", 5, 65],
      ["pause", 65, 75],
      ["work", 75, 135],
      ["catch-up", 135, 145],
      ["tidy", 145, 150],
    ]);
  });

  it("is work alone where nothing is aside", () => {
    expect(order(60)).toEqual([["work", 0, 60]]);
  });

  it("fills the session without gaps, in whole minutes, and works as long as is left", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 600 }), fc.nat(100), fc.nat(100), (minutes, aside, buffer) => {
        fc.pre(aside + buffer < minutes);
        const all = runningOrder(session(minutes, aside, { buffer }));
        expect(all[0]!.from).toBe(0);
        expect(all.at(-1)!.until).toBe(minutes);
        for (const [i, { from, until }] of all.entries()) {
          expect(until).toBeGreaterThan(from);
          expect(Number.isInteger(until)).toBe(true);
          if (i > 0) expect(from).toBe(all[i - 1]!.until);
        }
        const work = all.filter(({ kind }) => kind === "work").reduce((sum, { from, until }) => sum + until - from, 0);
        expect(work).toBe(minutes - aside - buffer);
      }),
    );
  });
});

describe("workUntilPause(session)", () => {
  it("is half of the work, or nothing without a pause", () => {
    expect(workUntilPause(session(150, 20, { buffer: 10 }))).toBe(60);
    expect(workUntilPause(session(101, 20))).toBe(41);
    expect(workUntilPause(session(60))).toBeUndefined();
  });
});

describe("minuteOfWork(session, work)", () => {
  it.each([
    [0, 5],
    [59, 64],
    [60, 65],
    [61, 76],
    [120, 135],
    [121, 150],
  ])("%d minutes of work are done in minute %d", (work, minute) => {
    expect(minuteOfWork(session(150, 20, { buffer: 10 }), work)).toBe(minute);
  });
});
