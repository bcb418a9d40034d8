import { describe, expect, it } from "vitest";
import { CATCH_UP, IDLE, leafEstimates, remainingTime, touchClock, workedAt } from "../../../src/core/bench/pace.ts";
import type { Clock, Progress, Tick } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import { fc } from "../../seed.ts";
import { begin, fixturePlan } from "./made.ts";

const MINUTE = 60_000;
const ticked = (ticks: readonly Tick[]): Progress => ({ ...begin(), ticks });

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
  it("adds the kit's rates for what a leaf needs", () => {
    const { pattern, estimates } = fixturePlan("little-gull");
    const rates = { leaf: 12, score: 6, mark: 4, cut: 6, fold: 10, check: 20 };
    const plain = pattern.leaves.find(
      (leaf) => leaf.patternPage !== null && (leaf.patternPage + 1) % 20 !== 0 && leaf.cuts.length === 4,
    )!;
    const levels = new Set(plain.spans.map((span) => span.level)).size;
    expect(estimates.get(plain.leaf)).toBe(
      1000 * (rates.leaf + levels * rates.score + 4 * (rates.mark + rates.cut) + 5 * rates.fold),
    );
    // Pattern page 19 is the tenth picture leaf: a checkpoint.
    const tenth = pattern.leaves.find((leaf) => leaf.patternPage === 19)!;
    const without = leafEstimates(pattern, { ...fixtureKit("little-gull").rates, check: 0 });
    expect(estimates.get(tenth.leaf)! - without.get(tenth.leaf)!).toBe(20_000);
  });

  it("counts the first whole fold of a stepped leaf and no second fold at the front line", () => {
    const { pattern, estimates } = fixturePlan("evening-boat");
    const leaf = pattern.leaves.find((one) => one.spans.map((span) => span.level).join() === "3,2,1,2,3")!;
    const nothingElse = { leaf: 0, score: 0, mark: 0, cut: 0, check: 0 };
    const folds = leafEstimates(pattern, { ...fixtureKit("evening-boat").rates, ...nothingElse, notch: 0, fold: 1 });
    expect(folds.get(leaf.leaf)).toBe(5000);
    expect(estimates.size).toBe(pattern.leaves.length);
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
    expect(remainingTime(ticked(caught), estimates)).toEqual({ ms: 1_950_000, own: true });
  });

  it("is nothing when all is done", () => {
    expect(remainingTime(ticked(timed(20, 90_000)), estimates).ms).toBe(0);
  });
});
