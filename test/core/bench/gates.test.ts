import { describe, expect, it } from "vitest";
import type { BenchPlan } from "../../../src/core/bench/bench-plan.ts";
import { gateBefore } from "../../../src/core/bench/gates.ts";
import { doItem } from "../../../src/core/bench/item-done.ts";
import { isFinished } from "../../../src/core/bench/moving.ts";
import { measureBatch, type Progress, passGate, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { madeKit } from "../kit/made-kit.ts";
import { begin, leafPlace, madePlan } from "./made.ts";

/** Names of the questions that come up on the way, each answered, with what they stand before. */
function walk(plan: BenchPlan): string[] {
  let progress: Progress = begin();
  const asked: string[] = [];
  for (const place of plan.places) {
    for (let gate = gateBefore(plan, progress, place); gate; gate = gateBefore(plan, progress, place)) {
      asked.push(`${place.item?.name ?? place.leaf}: ${gate.name}`);
      progress =
        gate.kind === "measure" ? measureBatch(progress, { leaves: 2, thickness: 1 }) : passGate(progress, gate.name);
    }
    progress = place.item ? doItem(progress, place.item) : tickUntimed(progress, [place.leaf]);
  }
  expect(isFinished(plan, progress)).toBe(true);
  return asked;
}

describe("gateBefore(plan, progress, place)", () => {
  // By hand: batches begin at leaves 5 and 21; every tenth of leaves 5 to 36 is a checkpoint.
  it("asks at each batch, at every tenth picture leaf, and once for the first batch", () => {
    expect(walk(madePlan())).toEqual([
      "5: batch 1",
      "14: check 14",
      "21: measure",
      "21: batch 2",
      "24: check 24",
      "34: check 34",
    ]);
  });

  it("asks to measure before the border leaves where there is one batch only", () => {
    expect(walk(madePlan(madeKit({ fit: { batch: 32 } }))).slice(-2)).toEqual(["34: check 34", "37: measure"]);
  });

  it("tells with a batch which", () => {
    const plan = madePlan();
    const gate = gateBefore(plan, begin(), leafPlace(plan, leafNumber(21)));
    expect(gate).toEqual({ kind: "batch", name: "batch 2", batch: plan.batches[1] });
    const ticked = tickUntimed(begin(), plan.stops.slice(0, 20));
    expect(gateBefore(plan, ticked, leafPlace(plan, leafNumber(21)))).toEqual({
      kind: "measure",
      name: "measure",
      batch: plan.batches[0],
    });
    expect(gateBefore(plan, begin(), leafPlace(plan, leafNumber(14)))).toEqual({ kind: "check", name: "check 14" });
    expect(gateBefore(plan, begin(), leafPlace(plan, leafNumber(15)))).toBeUndefined();
  });

  it("does not ask to measure before the whole first batch is ticked, nor before a ticked leaf at all", () => {
    const plan = madePlan();
    const [first, second] = plan.batches;
    const leaves = plan.stops.filter((leaf) => leaf <= first!.last.leaf);
    const allButOne = tickUntimed(begin(), leaves.slice(0, -1));
    expect(gateBefore(plan, allButOne, leafPlace(plan, second!.first.leaf))?.name).toBe("batch 2");
    expect(gateBefore(plan, tickUntimed(begin(), leaves), leafPlace(plan, second!.first.leaf))?.name).toBe("measure");
    expect(
      gateBefore(plan, tickUntimed(begin(), [...leaves, second!.first.leaf]), leafPlace(plan, second!.first.leaf)),
    ).toBeUndefined();
  });
});
