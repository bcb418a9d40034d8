import { describe, expect, it } from "vitest";
import type { BenchItem, LeavesOfBatch, ScoredRun } from "../../../src/core/bench/bench-item.ts";
import { doItem, doUntimed, isItemDone, openLeaves, openRun, undoItem } from "../../../src/core/bench/item-done.ts";
import type { Progress } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { begin, madePlan } from "./made.ts";

const items = madePlan().places.flatMap(({ item }) => item ?? []);
const item = (name: string): BenchItem => items.find((one) => one.name === name)!;
const gauge = item("step gauge");
const line = item("score 1 11-30") as ScoredRun;
const passed = (...names: string[]): Progress => ({ ...begin(), passed: names });

describe("other work that is done", () => {
  it("is kept by its name, once, and taken off again", () => {
    const done = doItem(begin(), gauge);
    expect(done.passed).toEqual(["step gauge"]);
    expect([isItemDone(begin(), gauge), isItemDone(done, gauge), isItemDone(done, line)]).toEqual([false, true, false]);
    expect(doItem(done, gauge)).toBe(done);
    expect(undoItem(doItem(passed("batch 1"), gauge), gauge).passed).toEqual(["batch 1"]);
  });

  it("is done away from the page without a time or drying", () => {
    const clock = { worked: 90_000, seen: 1e12, ticked: 20_000 };
    const done = doUntimed({ ...begin(), clock }, [gauge, line]);
    expect(done).toEqual({ ...begin(), clock, passed: ["step gauge", "score 1 11-30"] });
  });

  it("counts none of its time to the next leaf", () => {
    const clock = { worked: 90_000, seen: 1e12, ticked: 20_000 };
    expect(doItem({ ...begin(), clock }, gauge).clock).toEqual({ ...clock, ticked: 90_000 });
  });
});

describe("a line pressed on a run of leaves", () => {
  it("is done where every leaf that needs it was scored, in however many runs", () => {
    expect(isItemDone(doItem(begin(), line), line)).toBe(true);
    expect(isItemDone(passed("score 1 5-20", "score 1 21-36"), line)).toBe(true);
    expect(isItemDone(passed("score 2 1-40"), line)).toBe(false);
  });

  it("is open from the first to the last leaf that was not scored", () => {
    expect(openRun(begin(), line)).toEqual({ first: 11, last: 30 });
    expect(openRun(passed("score 1 11-27"), line)).toEqual({ first: 28, last: 30 });
    expect(openRun(passed("score 1 14-16"), line)).toEqual({ first: 11, last: 30 });
    expect(openRun(passed("score 1 11-30"), line)).toBeUndefined();
  });

  it("does not ask for leaves that are scored through", () => {
    const through = { ...line, needed: [11, 13, 30].map(leafNumber) };
    expect(isItemDone(passed("score 1 11-13", "score 1 30-30"), through)).toBe(true);
  });

  it("is taken off with every run that it was scored in", () => {
    const done = passed("step gauge", "score 1 5-20", "score 1 21-36", "score 2 1-40", "score 1 60-70");
    expect(undoItem(done, line).passed).toEqual(["step gauge", "score 2 1-40", "score 1 60-70"]);
  });
});

describe("notches or tacks of a batch", () => {
  const tacks = madePlan().places.find(({ item: one }) => one?.name === "tack batch 2")!.item as LeavesOfBatch;
  const two = { ...tacks, leaves: [30, 33].map(leafNumber) };

  it("are done where those of every leaf are, whatever the batch was when they were made", () => {
    expect(doItem(begin(), two).passed).toEqual(["tack 30", "tack 33"]);
    expect(isItemDone(passed("tack 33", "tack 29", "tack 30"), two)).toBe(true);
    expect(isItemDone(passed("tack 33", "notch 30"), two)).toBe(false);
    expect(openLeaves(passed("tack 33"), two)).toEqual([30]);
    expect(undoItem(passed("tack 29", "tack 30", "notch 30", "tack 33"), two).passed).toEqual(["tack 29", "notch 30"]);
  });
});
