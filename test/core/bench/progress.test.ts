import { describe, expect, it } from "vitest";
import { lostOf } from "../../../src/core/bench/lost-leaves.ts";
import {
  beginProgress,
  measureBatch,
  type Progress,
  passGate,
  showLeaf,
  tickLeaf,
  tickUntimed,
  untickLeaf,
} from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
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
