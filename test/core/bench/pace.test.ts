import { describe, expect, it } from "vitest";
import { doItem } from "../../../src/core/bench/item-done.ts";
import { CATCH_UP, IDLE, remainingTime, TELLING, touchClock, workedAt } from "../../../src/core/bench/pace.ts";
import type { Clock, Progress, Tick } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { countsOf, effortOf } from "../../../src/core/plan/effort.ts";
import { fc } from "../../seed.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";
import { begin, madePlan, SLANTING } from "./made.ts";
import { RATES } from "./made-rates.ts";

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

describe("remainingTime(plan, progress)", () => {
  const leaves = Array.from({ length: 20 }, (_, i) => leafNumber(i + 1));
  const estimates = new Map(leaves.map((leaf) => [leaf, 100_000] as const));
  const plan = { estimates, places: leaves.map((leaf) => ({ leaf, item: undefined })) };
  const timed = (count: number, took: number) =>
    Array.from({ length: count }, (_, i) => ({ leaf: leafNumber(i + 1), took }));

  it("is the estimate of the open leaves until five leaves were timed", () => {
    expect(remainingTime(plan, ticked([]))).toEqual({ ms: 2_000_000, own: false });
    expect(remainingTime(plan, ticked(timed(4, 150_000)))).toEqual({ ms: 1_600_000, own: false });
  });

  it("is scaled by her own pace from then on; ticks made in passing do not count as pace", () => {
    expect(remainingTime(plan, ticked(timed(5, 150_000)))).toEqual({ ms: 2_250_000, own: true });
    const caught = [
      ...timed(5, 150_000),
      { leaf: leafNumber(6), took: 0 },
      { leaf: leafNumber(7), took: CATCH_UP - 1 },
    ];
    expect(remainingTime(plan, ticked(timed(5, CATCH_UP)))).toEqual({ ms: 15 * CATCH_UP, own: true });
    expect(remainingTime(plan, ticked(timed(5, CATCH_UP - 1)))).toEqual({ ms: 1_500_000, own: false });
    expect(remainingTime(plan, ticked(caught))).toEqual({ ms: 1_950_000, own: true });
  });

  it("leaves ticks of leaves that are no longer folded out of her pace", () => {
    const gone = [...timed(4, 150_000), { leaf: leafNumber(99), took: 1_000_000 }];
    expect(remainingTime(plan, ticked(gone))).toEqual({ ms: 1_600_000, own: false });
  });

  it("is nothing when all is done", () => {
    expect(remainingTime(plan, ticked(timed(20, 90_000))).ms).toBe(0);
  });

  it("counts other work that is open, at the pace of the leaves", () => {
    const line = madePlan().places.find(({ item }) => item?.name === "score 2 1-40")!.item!;
    const both = { ...plan, places: [{ leaf: leafNumber(1), item: line }, ...plan.places] };
    // By hand: forty leaves at 6 s.
    expect(remainingTime(both, ticked([])).ms).toBe(2_240_000);
    expect(remainingTime(both, ticked(timed(5, 150_000))).ms).toBe(1.5 * 1_740_000);
    expect(remainingTime(both, doItem(ticked([]), line)).ms).toBe(2_000_000);
  });

  it("is before the work what the kit's page tells: all counts by the kit's own rates", () => {
    const rates = RATES;
    for (const kit of [madeKit({ rates }), litKit({ rates }), { ...SLANTING, rates }]) {
      const whole = madePlan(kit);
      const { minutes } = effortOf(countsOf(whole.pattern), rates);
      expect(remainingTime(whole, begin()).ms).toBeCloseTo(60_000 * minutes, 6);
    }
  });
});
