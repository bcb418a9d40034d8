import { describe, expect, it } from "vitest";
import { atWork, SITTING_BREAK, stopAt, stopOf, workedSitting } from "../../../src/core/bench/sitting.ts";
import { begin } from "./made.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const NOW = 1e12;

describe("a sitting", () => {
  const first = atWork(begin(), NOW);

  it("begins with the first thing that is done", () => {
    expect(workedSitting(begin(), NOW)).toBeUndefined();
    expect(first).toEqual({
      ...begin(),
      clock: { worked: 0, seen: NOW, ticked: 0 },
      sitting: { began: NOW, worked: 0 },
    });
  });

  it("goes on over a pause, and ends with a break of three hours", () => {
    expect(SITTING_BREAK).toBe(3 * HOUR);
    const after = atWork(first, NOW + 3 * MINUTE);
    expect(after.sitting).toEqual(first.sitting);
    expect(atWork(after, NOW + 3 * MINUTE + SITTING_BREAK - 1).sitting).toEqual(first.sitting);
    // By hand: three minutes of the evening before, and four of the pause.
    const next = atWork(after, NOW + 3 * MINUTE + SITTING_BREAK);
    expect(next.sitting).toEqual({ began: NOW + 3 * MINUTE + SITTING_BREAK, worked: 7 * MINUTE });
    expect(workedSitting(next, next.clock.seen + 2 * MINUTE)).toBe(2 * MINUTE);
    expect(workedSitting(after, NOW + 24 * HOUR)).toBeUndefined();
  });

  it("begins anew where the device's clock was set far back", () => {
    expect(atWork(first, NOW - 24 * HOUR).sitting).toEqual({ began: NOW - 24 * HOUR, worked: 0 });
  });
});

describe("the time to stop", () => {
  const until = NOW + 2 * HOUR;
  const set = stopAt(begin(), until, NOW);

  it("belongs to the sitting, which it begins where she has done nothing yet", () => {
    expect(set.sitting).toEqual({ began: NOW, worked: 0, until });
    expect(stopOf(set, NOW + HOUR)).toBe(until);
    expect(stopOf(atWork(set, NOW + HOUR), NOW + 3 * HOUR)).toBe(until);
    expect(stopOf(set, NOW + SITTING_BREAK)).toBeUndefined();
  });

  it("can be taken away", () => {
    expect(stopOf(stopAt(set, undefined, NOW), NOW)).toBeUndefined();
  });

  it("is none that lies days away, whatever is kept", () => {
    expect(stopOf(stopAt(begin(), 1e308, NOW), NOW)).toBeUndefined();
    expect(stopOf(stopAt(begin(), 0, NOW), NOW)).toBeUndefined();
  });
});
