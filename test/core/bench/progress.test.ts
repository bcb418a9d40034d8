import { describe, expect, it } from "vitest";
import {
  beginProgress,
  bringBack,
  isTicked,
  loseLeaf,
  lostOf,
  measureBatch,
  type Progress,
  passGate,
  showLeaf,
  tickLeaf,
  tickUntimed,
  untickLeaf,
} from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fc } from "../../seed.ts";
import { begin } from "./made.ts";

const worked = (progress: Progress, ms: number): Progress => ({
  ...progress,
  clock: { ...progress.clock, worked: progress.clock.worked + ms },
});

describe("progress", () => {
  it("begins with nothing done and the fit's lost leaves", () => {
    const fresh = beginProgress({
      kit: "k",
      fit: "f",
      revision: "r",
      at: leafNumber(4),
      lost: [9, 6].map(leafNumber),
    });
    expect(fresh).toMatchObject({ kit: "k", fit: "f", revision: "r", at: 4, ticks: [], passed: [] });
    expect(fresh.clock).toEqual({ worked: 0, seen: 0, ticked: 0 });
    expect(fresh.measured).toBeUndefined();
    expect(lostOf(fresh)).toEqual([6, 9]);
  });

  it("times a leaf by the work since the tick before", () => {
    const first = tickLeaf(worked(begin(), 70_000), leafNumber(5));
    const second = tickLeaf(worked(first, 40_000), leafNumber(3));
    expect(second.ticks).toEqual([
      { leaf: 3, took: 40_000 },
      { leaf: 5, took: 70_000 },
    ]);
    expect(tickLeaf(worked(second, 9000), leafNumber(5))).toEqual(worked(second, 9000));
  });

  it("ticks leaves that were folded elsewhere without a time, and keeps the times of the others", () => {
    const timed = tickLeaf(worked(begin(), 50_000), leafNumber(2));
    const all = tickUntimed(timed, [3, 2, 1].map(leafNumber));
    expect(all.ticks).toEqual([
      { leaf: 1, took: 0 },
      { leaf: 2, took: 50_000 },
      { leaf: 3, took: 0 },
    ]);
    expect(tickLeaf(worked(all, 20_000), leafNumber(4)).ticks.at(-1)).toEqual({ leaf: 4, took: 20_000 });
    expect(untickLeaf(all, leafNumber(2)).ticks.map((tick) => tick.leaf)).toEqual([1, 3]);
  });

  it("answers a prompt once, and a measurement answers its prompt", () => {
    const passed = passGate(begin(), "batch 2");
    expect(passGate(passed, "batch 2")).toBe(passed);
    const measured = measureBatch(passed, { leaves: 20, thickness: 9 });
    expect(measured.passed).toEqual(["batch 2", "measure"]);
    expect(measured.measured).toEqual({ leaves: 20, thickness: 9 });
    expect(showLeaf(measured, leafNumber(7)).at).toBe(7);
  });
});

describe("a lost leaf", () => {
  const folded = tickUntimed(begin(), [10, 11, 12, 13, 14, 15].map(leafNumber));

  it("takes its own tick and those of changed leaves along, and brings them back", () => {
    const lost = loseLeaf(folded, leafNumber(12), [13, 15, 40].map(leafNumber));
    expect(lost.ticks.map((tick) => tick.leaf)).toEqual([10, 11, 14]);
    expect(lost.lost).toEqual([{ leaf: 12, cleared: [12, 13, 15].map((leaf) => ({ leaf, took: 0 })) }]);
    expect(bringBack(lost, leafNumber(12), [13, 15, 40].map(leafNumber))).toEqual(folded);
  });

  it("does not bring ticks back that were folded with other leaves lost", () => {
    // 12 is lost, then 14: 15's first tick was for marks without 12, its second for marks without 12 and 14.
    const both = loseLeaf(
      tickUntimed(loseLeaf(folded, leafNumber(12), [13, 14, 15].map(leafNumber)), [13, 14, 15].map(leafNumber)),
      leafNumber(14),
      [leafNumber(15)],
    );
    const firstBack = bringBack(both, leafNumber(12), [13, 15].map(leafNumber));
    expect(lostOf(firstBack)).toEqual([14]);
    expect(firstBack.ticks.map((tick) => tick.leaf)).toEqual([10, 11]);
    const allBack = bringBack(firstBack, leafNumber(14), [leafNumber(15)]);
    expect(allBack.ticks.map((tick) => tick.leaf)).toEqual([10, 11]);
    expect(allBack.lost).toEqual([]);
  });

  it("leaves everything as it is where the leaf was not lost", () => {
    expect(bringBack(folded, leafNumber(12), [leafNumber(13)])).toBe(folded);
  });

  it("is undone exactly, one after another, in the order back", () => {
    const step = fc.record({
      leaf: fc.integer({ min: 1, max: 30 }).map(leafNumber),
      reach: fc.integer({ min: 0, max: 12 }),
    });
    const start = fc.uniqueArray(fc.integer({ min: 1, max: 42 }).map(leafNumber), { minLength: 1 });
    fc.assert(
      fc.property(start, fc.uniqueArray(step, { selector: (one) => one.leaf, minLength: 1 }), (ticked, steps) => {
        const begun = tickUntimed(begin(), ticked);
        const changed = ({ leaf, reach }: (typeof steps)[number]) =>
          Array.from({ length: reach }, (_, i) => leafNumber(leaf + 1 + i));
        const states = [begun];
        for (const one of steps) states.push(loseLeaf(states.at(-1)!, one.leaf, changed(one)));
        let now = states.at(-1)!;
        expect(steps.every((one) => !isTicked(now, one.leaf))).toBe(true);
        for (const [i, one] of [...steps.entries()].reverse()) {
          now = bringBack(now, one.leaf, changed(one));
          expect(now).toEqual(states[i]);
        }
      }),
      { numRuns: 200 },
    );
  });
});
