import { describe, expect, it } from "vitest";
import {
  CATCH_UP,
  IDLE,
  leafEstimates,
  remainingTime,
  TELLING,
  touchClock,
  workedAt,
} from "../../../src/core/bench/pace.ts";
import type { Clock, Progress, Tick } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Rates } from "../../../src/core/kit/kit.ts";
import { fc } from "../../seed.ts";
import { madeLeaf, madePattern, madePocket } from "../plan/made-pattern.ts";
import { begin } from "./made.ts";

const MINUTE = 60_000;
const ticked = (ticks: readonly Tick[]): Progress => ({ ...begin(), ticks });

describe("the limits", () => {
  it("are a pause of four minutes, five timed leaves and three seconds between ticks", () => {
    expect([IDLE, TELLING, CATCH_UP]).toEqual([240_000, 5, 3000]);
  });
});

describe("the clock", () => {
  it("counts time from the first thing done, a pause up to four minutes", () => {
    const start = touchClock({ worked: 0, seen: 0, ticked: 0 }, 1e12);
    expect(start).toEqual({ worked: 0, seen: 1e12, ticked: 0 });
    expect(workedAt(start, 1e12 + MINUTE)).toBe(MINUTE);
    expect(workedAt(start, 1e12 + 90 * MINUTE)).toBe(4 * MINUTE);
  });

  it("never runs backward nor faster than the day, whatever the device's clock does", () => {
    const times = fc.array(fc.integer({ min: 1, max: 1e9 }), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(times, (list) => {
        let clock: Clock = { worked: 0, seen: 0, ticked: 0 };
        for (const now of list) {
          const next = touchClock(clock, now);
          const passed = clock.seen === 0 ? 0 : Math.max(0, now - clock.seen);
          expect(next.worked - clock.worked).toBe(Math.min(passed, IDLE));
          clock = next;
        }
      }),
    );
  });
});

describe("leafEstimates(pattern, rates)", () => {
  const rates: Rates = {
    leaf: 12,
    score: 6,
    mark: 4,
    cut: 7,
    fold: 10,
    check: 20,
    tack: 15,
    notch: 25,
    part: 420,
    first: 2,
  };
  const levels = [10, 20, 30].map((depth) => ({ name: `${depth}`, depth, line: undefined, background: depth === 20 }));
  const leaves = [
    madeLeaf(4, null, [2]),
    madeLeaf(5, 1, [3, 2, 3]),
    { ...madeLeaf(6, 19, [1, 2, 1]), tacks: [{ from: 0, to: 60 }] },
  ];

  // By hand: a border leaf is turned, scored and folded once; two marks and cuts make three folds; page 19 is a checkpoint.
  it.each([
    ["single", [28, 12 + 2 * 6 + 2 * 11 + 30 + 25, 12 + 2 * 6 + 2 * 11 + 30 + 20]],
    // The front line, too, and its fold; but no second fold of what lies at it.
    ["stepped", [28, 12 + 3 * 6 + 2 * 11 + 40 + 25, 12 + 2 * 6 + 2 * 11 + 20 + 20]],
  ] as const)("adds the rates for what a leaf needs, tacks left out: %s folds", (foldStyle, seconds) => {
    const pattern = madePattern({ levels, leaves, pocket: madePocket(5), fit: { foldStyle } });
    expect([...leafEstimates(pattern, rates)]).toEqual(seconds.map((one, i) => [4 + i, 1000 * one]));
  });
});

describe("remainingTime(progress, estimates)", () => {
  const estimates = new Map(Array.from({ length: 20 }, (_, i) => [leafNumber(i + 1), 100_000] as const));
  const timed = (count: number, took: number) =>
    Array.from({ length: count }, (_, i) => ({ leaf: leafNumber(i + 1), took }));

  it("is the estimate of the open leaves until five leaves were timed", () => {
    expect(remainingTime(ticked([]), estimates)).toEqual({ ms: 2_000_000, own: false });
    expect(remainingTime(ticked(timed(4, 150_000)), estimates)).toEqual({ ms: 1_600_000, own: false });
  });

  it("is scaled by her own pace from then on; ticks made in passing do not count as pace", () => {
    expect(remainingTime(ticked(timed(5, 150_000)), estimates)).toEqual({ ms: 2_250_000, own: true });
    const caught = [
      ...timed(5, 150_000),
      { leaf: leafNumber(6), took: 0 },
      { leaf: leafNumber(7), took: CATCH_UP - 1 },
    ];
    expect(remainingTime(ticked(timed(5, CATCH_UP)), estimates)).toEqual({ ms: 15 * CATCH_UP, own: true });
    expect(remainingTime(ticked(timed(5, CATCH_UP - 1)), estimates)).toEqual({ ms: 1_500_000, own: false });
    expect(remainingTime(ticked(caught), estimates)).toEqual({ ms: 1_950_000, own: true });
  });

  it("leaves ticks of leaves that are no longer folded out of her pace", () => {
    const gone = [...timed(4, 150_000), { leaf: leafNumber(99), took: 1_000_000 }];
    expect(remainingTime(ticked(gone), estimates)).toEqual({ ms: 1_600_000, own: false });
  });

  it("is nothing when all is done", () => {
    expect(remainingTime(ticked(timed(20, 90_000)), estimates).ms).toBe(0);
  });
});
