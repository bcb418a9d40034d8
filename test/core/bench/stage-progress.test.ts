import { describe, expect, it } from "vitest";
import { doUntimed } from "../../../src/core/bench/item-done.ts";
import { showPlace, tickUntimed } from "../../../src/core/bench/progress.ts";
import { batchProgress, stageProgress } from "../../../src/core/bench/stage-progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { begin, leafPlace, madePlan } from "./made.ts";

const plan = madePlan();
const leaves = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, i) => leafNumber(from + i));

describe("stageProgress(plan, progress)", () => {
  it("counts every place of the bench in one stage", () => {
    const stages = stageProgress(plan, begin());
    expect(stages.reduce((sum, { of }) => sum + of, 0)).toBe(plan.places.length);
    expect(stages.find(({ id }) => id === "fold")!.of).toBe(40);
    expect(stages.map(({ done }) => done)).toEqual(stages.map(() => 0));
  });

  it("is at the stage of what lies on the bench", () => {
    const now = (progress = begin()) => stageProgress(plan, progress).filter((one) => one.now);
    expect(now(showPlace(begin(), plan.places[0]!))).toMatchObject([{ id: "prepare" }]);
    expect(now(showPlace(begin(), leafPlace(plan, 7)))).toMatchObject([{ id: "fold" }]);
  });

  it("counts what is ticked, and is nowhere once all is done", () => {
    const items = plan.places.flatMap(({ item }) => item ?? []);
    const folded = tickUntimed(begin(), leaves(1, 39));
    expect(stageProgress(plan, folded).find(({ id }) => id === "fold")).toMatchObject({ done: 39, of: 40 });
    const all = stageProgress(plan, doUntimed(tickUntimed(begin(), plan.stops), items));
    expect(all.every(({ done, of, now }) => done === of && !now)).toBe(true);
  });
});

describe("batchProgress(plan, progress)", () => {
  it("counts the folded leaves of each batch and no border leaves", () => {
    expect(batchProgress(plan, begin()).map(({ done, of }) => [done, of])).toEqual([
      [0, 16],
      [0, 16],
    ]);
    const some = tickUntimed(begin(), leaves(1, 22));
    expect(batchProgress(plan, some).map(({ done }) => done)).toEqual([16, 2]);
  });
});
