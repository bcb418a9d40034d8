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
import { benchKit } from "../../../src/core/bench/fit-key.ts";
import { measureBatch, type Progress, passGate, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { withHeight } from "../../../src/core/fit/shape.ts";
import { FIXTURE_KITS, fixtureKit } from "../../input/kit/kit-folders.ts";
import { valueFrom } from "../findings/made.ts";
import { begin, fixturePlan } from "./made.ts";

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
  // Every tenth picture leaf is a checkpoint; batches of at most 20 are common practice, no source.
  it.each(FIXTURE_KITS)("%s: asks at each batch, at every tenth picture leaf, and once for the first batch", (slug) => {
    const { fit } = fixturePlan(slug).pattern;
    const count = fit.lastLeaf - fit.firstLeaf + 1;
    const batches = Math.ceil(count / 20);
    const firsts = Array.from({ length: batches }, (_, i) => fit.firstLeaf + Math.round((i * count) / batches));
    const expected = Array.from({ length: count }, (_, i) => fit.firstLeaf + i).flatMap((leaf, i) => [
      ...(leaf === firsts[1] ? [`${leaf}: measure`] : []),
      ...(firsts.includes(leaf) ? [`${leaf}: batch ${firsts.indexOf(leaf) + 1}`] : []),
      ...((i + 1) % 10 === 0 ? [`${leaf}: check ${leaf}`] : []),
    ]);
    expect(walk(fixturePlan(slug))).toEqual(expected);
  });

  it("does not ask to measure before the whole first batch is ticked, nor before a ticked leaf at all", () => {
    const plan = fixturePlan("little-gull");
    const [first, second] = plan.batches;
    const leaves = plan.stops.filter((leaf) => leaf <= first!.last.leaf);
    const allButOne = tickUntimed(begin(), leaves.slice(0, -1));
    expect(gateBefore(plan, allButOne, second!.first.leaf)?.name).toBe("batch 2");
    expect(gateBefore(plan, tickUntimed(begin(), leaves), second!.first.leaf)?.name).toBe("measure");
    expect(gateBefore(plan, tickUntimed(begin(), [...leaves, second!.first.leaf]), second!.first.leaf)).toBeUndefined();
  });
});

describe("moving", () => {
  const plan = fixturePlan("little-gull", { lostLeaves: [40, 41].map(leafNumber) });
  const last = plan.stops.at(-1)!;

  it("steps over lost leaves and stops at both ends", () => {
    expect([stopBeside(plan, leafNumber(39), 1), stopBeside(plan, leafNumber(42), -1)]).toEqual([42, 39]);
    expect([stopBeside(plan, leafNumber(1), -1), stopBeside(plan, last, 1)]).toEqual([1, last]);
    expect([
      nearestStop(plan, leafNumber(40)),
      nearestStop(plan, leafNumber(39)),
      nearestStop(plan, leafNumber(5000)),
    ]).toEqual([42, 39, last]);
  });

  it("goes on from the last leaf to the first open one, and stays when there is none", () => {
    const folded = tickUntimed(
      begin(),
      plan.stops.filter((leaf) => leaf !== 50),
    );
    expect(leafAfter(plan, folded, leafNumber(39))).toBe(42);
    expect(leafAfter(plan, folded, last)).toBe(50);
    expect(isFinished(plan, folded)).toBe(false);
    expect(leafAfter(plan, tickUntimed(folded, [leafNumber(50)]), last)).toBe(last);
    expect(untickedBefore(plan, folded, leafNumber(50))).toEqual([]);
    expect(untickedBefore(plan, folded, leafNumber(51))).toEqual([50]);
  });
});

describe("the plan's marks", () => {
  it("lie on the step of a ruler in the maker's units", () => {
    const kit = fixtureKit("little-gull");
    const inches = valueFrom(planBench(benchKit(kit, {}, "in")));
    const offStep = (one: BenchPlan, step: number) =>
      one.pattern.leaves
        .flatMap((leaf) => leaf.cuts)
        .filter(({ at }) => Math.abs(at / step - Math.round(at / step)) > 1e-4);
    expect(offStep(fixturePlan("little-gull"), 1)).toEqual([]);
    expect(offStep(inches, 25.4 / 16)).toEqual([]);
  });

  it("leave a centred picture where the kit's own step puts it", () => {
    const kit = fixtureKit("little-gull");
    const centred = { ...kit, fit: { ...kit.fit, head: undefined, shape: withHeight(kit.fit.shape, 124) } };
    const inches = valueFrom(planBench({ ...centred, units: "in" }));
    // 178 mm high, 124 mm of picture: 27 mm above it, which is no multiple of 1/16 in.
    expect(inches.pattern.fit.head).toBe(27);
  });

  it("have a revision that lost leaves and units do not change, and another picture height does", () => {
    const kit = fixtureKit("little-gull");
    const lost = { ...kit, units: "in" as const, fit: { ...kit.fit, lostLeaves: [leafNumber(40)] } };
    const revision = valueFrom(patternRevision(kit));
    expect(valueFrom(patternRevision(lost))).toBe(revision);
    const lower = { ...kit, fit: { ...kit.fit, shape: withHeight(kit.fit.shape, 120) } };
    expect(valueFrom(patternRevision(lower))).not.toBe(revision);
  });
});
