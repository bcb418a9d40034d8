import { describe, expect, it } from "vitest";
import {
  type BenchPlan,
  gateBefore,
  isFinished,
  leafAfter,
  nearestStop,
  patternRevision,
  planBench,
  stopBeside,
  untickedBefore,
} from "../../../src/core/bench/bench-plan.ts";
import { measureBatch, type Progress, passGate, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { type KitChanges, litKit, madeKit, WINDOW } from "../kit/made-kit.ts";
import { begin, madePlan } from "./made.ts";

/** Names of the questions that come up on the way, each answered, with the leaf that they stand before. */
function walk(plan: BenchPlan): string[] {
  let progress: Progress = begin();
  const asked: string[] = [];
  for (const leaf of plan.stops) {
    for (let gate = gateBefore(plan, progress, leaf); gate; gate = gateBefore(plan, progress, leaf)) {
      asked.push(`${leaf}: ${gate.name}`);
      progress =
        gate.kind === "measure" ? measureBatch(progress, { leaves: 2, thickness: 1 }) : passGate(progress, gate.name);
    }
    progress = tickUntimed(progress, [leaf]);
  }
  expect(isFinished(plan, progress)).toBe(true);
  return asked;
}

describe("gateBefore(plan, progress, leaf)", () => {
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
    const gate = gateBefore(plan, begin(), leafNumber(21));
    expect(gate).toEqual({ kind: "batch", name: "batch 2", batch: plan.batches[1] });
    const ticked = tickUntimed(begin(), plan.stops.slice(0, 20));
    expect(gateBefore(plan, ticked, leafNumber(21))).toEqual({
      kind: "measure",
      name: "measure",
      batch: plan.batches[0],
    });
    expect(gateBefore(plan, begin(), leafNumber(14))).toEqual({ kind: "check", name: "check 14" });
    expect(gateBefore(plan, begin(), leafNumber(15))).toBeUndefined();
  });

  it("does not ask to measure before the whole first batch is ticked, nor before a ticked leaf at all", () => {
    const plan = madePlan();
    const [first, second] = plan.batches;
    const leaves = plan.stops.filter((leaf) => leaf <= first!.last.leaf);
    const allButOne = tickUntimed(begin(), leaves.slice(0, -1));
    expect(gateBefore(plan, allButOne, second!.first.leaf)?.name).toBe("batch 2");
    expect(gateBefore(plan, tickUntimed(begin(), leaves), second!.first.leaf)?.name).toBe("measure");
    expect(gateBefore(plan, tickUntimed(begin(), [...leaves, second!.first.leaf]), second!.first.leaf)).toBeUndefined();
  });
});

describe("moving", () => {
  // By hand: leaves 20 and 21 of 40 are lost.
  const plan = madePlan(madeKit(), { lostLeaves: [20, 21].map(leafNumber) });
  const last = leafNumber(40);

  it("steps over lost leaves and stops at both ends", () => {
    expect([stopBeside(plan, leafNumber(19), 1), stopBeside(plan, leafNumber(22), -1)]).toEqual([22, 19]);
    expect([stopBeside(plan, leafNumber(7), 1), stopBeside(plan, leafNumber(7), -1)]).toEqual([8, 6]);
    expect([stopBeside(plan, leafNumber(1), -1), stopBeside(plan, last, 1)]).toEqual([1, 40]);
    expect([20, 19, 5000].map((leaf) => nearestStop(plan, leafNumber(leaf)))).toEqual([22, 19, 40]);
  });

  it("goes on from the last leaf to the first open one, and stays when there is none", () => {
    const folded = tickUntimed(
      begin(),
      plan.stops.filter((leaf) => leaf !== 30),
    );
    expect(leafAfter(plan, folded, leafNumber(19))).toBe(22);
    expect(leafAfter(plan, folded, last)).toBe(30);
    expect(isFinished(plan, folded)).toBe(false);
    const all = tickUntimed(folded, [leafNumber(30)]);
    expect(isFinished(plan, all)).toBe(true);
    expect(leafAfter(plan, all, last)).toBe(40);
    expect(untickedBefore(plan, folded, leafNumber(30))).toEqual([]);
    expect(untickedBefore(plan, folded, leafNumber(31))).toEqual([30]);
    expect(untickedBefore(plan, begin(), leafNumber(3))).toEqual([1, 2]);
  });
});

describe("planBench(kit)", () => {
  it("has every folded leaf in book order, the kit's batches and an estimate for each leaf", () => {
    const plan = madePlan(madeKit({ gaugeTile: 0.5 }));
    expect(plan.stops).toEqual(Array.from({ length: 40 }, (_, i) => i + 1));
    // By hand: before leaf 21 twenty leaves of 0.15 mm are turned, six pieces of half a millimetre.
    expect(plan.batches.map(({ first, count, tiles }) => [first.leaf, count, tiles])).toEqual([
      [5, 16, 1],
      [21, 16, 6],
    ]);
    expect([...plan.estimates.keys()]).toEqual(plan.stops);
  });

  it("says why a kit cannot be laid out", () => {
    expect(failureIn(planBench(madeKit({ book: { leafWidth: 30 } })))).toMatchObject({ kind: "flap-in-gutter" });
  });

  const offStep = (plan: BenchPlan, step: number) =>
    plan.pattern.leaves
      .flatMap((leaf) => leaf.cuts)
      .filter(({ at }) => Math.abs(at / step - Math.round(at / step)) > 1e-4);

  it.each([
    ["mm", 1, 1],
    ["mm", 0.5, 0.5],
    ["mm", 25.4 / 32, 0.5],
    ["in", 1, 25.4 / 16],
    ["in", 0.5, 25.4 / 32],
  ] as const)("marks in %s, from a step of %d mm, at steps of %d mm", (units, markStep, step) => {
    const plan = madePlan(madeKit({ units, fit: { markStep } }));
    expect(offStep(plan, step)).toEqual([]);
    expect(plan.pattern.fit.markStep).toBeCloseTo(step, 9);
  });

  it("leaves a centred picture where the kit's own step puts it", () => {
    // 120 mm high, 41 mm of picture: 39.5 mm above it, on whole millimetres 40, which is no multiple of 1/16 in.
    const shape = { solve: "opening", pictureLeaves: "fill", height: 41 } as const;
    const inches = madePlan(madeKit({ units: "in", fit: { head: undefined, shape } }));
    expect(inches.pattern.fit.head).toBe(40);
  });
});

describe("patternRevision(kit)", () => {
  const revision = valueFrom(patternRevision(madeKit()));
  const shape = { solve: "opening", pictureLeaves: "fill", height: 42 } as const;

  it.each([
    ["lost leaves", { fit: { lostLeaves: [leafNumber(20)] } }, true],
    ["units", { units: "in" }, true],
    ["a light", { light: undefined, cells: "AAA" }, true],
    ["another height", { fit: { shape } }, false],
    ["other borders", { fit: { borderLeaves: [5, 4] } }, false],
  ] as [string, KitChanges, boolean][])("with %s is the same: %s", (_, changes, same) => {
    expect(valueFrom(patternRevision(madeKit(changes))) === revision).toBe(same);
  });

  it("does not ask for the window, and fails where the kit does not fit", () => {
    // Its window could not be cut, and that stops no folding.
    const lip = litKit({ insert: { ...WINDOW, lip: 29 } });
    expect(valueFrom(patternRevision(lip))).toBe(valueFrom(patternRevision(litKit())));
    expect(failureIn(patternRevision(madeKit({ book: { leafWidth: 30 } })))).toMatchObject({ kind: "flap-in-gutter" });
  });
});
