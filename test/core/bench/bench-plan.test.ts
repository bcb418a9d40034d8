import { describe, expect, it } from "vitest";
import { type BenchPlan, nearestStop } from "../../../src/core/bench/bench-plan.ts";
import { CUT_WAY } from "../../../src/core/bench/cut-way.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { type KitChanges, litKit, madeKit, WINDOW } from "../kit/made-kit.ts";
import { madePlan } from "./made.ts";

describe("plan(kit)", () => {
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

  it("leaves a window out that cannot be cut, and none that can", () => {
    expect(madePlan(litKit()).pattern.window).toBeDefined();
    const uncut = madePlan(litKit({ insert: { ...WINDOW, lip: 29 } }));
    expect(uncut.pattern).toEqual(madePlan(litKit({ insert: undefined })).pattern);
    const end = uncut.places.filter(({ leaf }) => leaf === 60).flatMap(({ item }) => item?.name ?? []);
    expect(end).toEqual(["tack batch 3", "step hold", "step light"]);
  });

  it("says why a kit cannot be laid out", () => {
    expect(failureIn(CUT_WAY.plan(madeKit({ book: { leafWidth: 30 } })))).toMatchObject({ kind: "flap-in-gutter" });
  });

  it("lays no kit out of which no leaf would be cut, in whatever units", () => {
    // 60 of 100 of a picture 4 mm high: strips of 2.4 mm, below the least tab of 3 mm.
    const shape = { solve: "opening", pictureLeaves: "fill", height: 4 } as const;
    const fit = { borderLeaves: [10, 10], shape } as const;
    for (const units of ["mm", "in"] as const)
      expect(failureIn(CUT_WAY.plan(madeKit({ units, fit })))).toMatchObject({ kind: "picture-flat" });
    expect(failureIn(CUT_WAY.revision(madeKit({ fit })))).toMatchObject({ kind: "picture-flat" });
  });

  const offStep = (plan: BenchPlan<Pattern>, step: number) =>
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

describe("nearestStop(plan, leaf)", () => {
  it("is the leaf itself, the next one that is folded, or the last", () => {
    const plan = madePlan(madeKit(), { lostLeaves: [20, 21].map(leafNumber) });
    expect([20, 19, 5000].map((leaf) => nearestStop(plan, leafNumber(leaf)))).toEqual([22, 19, 40]);
  });
});

describe("revision(kit)", () => {
  const revision = valueFrom(CUT_WAY.revision(madeKit()));
  const shape = { solve: "opening", pictureLeaves: "fill", height: 42 } as const;

  it.each([
    ["lost leaves", { fit: { lostLeaves: [leafNumber(20)] } }, true],
    ["units", { units: "in" }, true],
    ["a light", { light: undefined, cells: "AAA" }, true],
    ["another height", { fit: { shape } }, false],
    ["other borders", { fit: { borderLeaves: [5, 4] } }, false],
  ] as [string, KitChanges, boolean][])("with %s is the same: %s", (_, changes, same) => {
    expect(valueFrom(CUT_WAY.revision(madeKit(changes))) === revision).toBe(same);
  });

  it("does not ask for the window, and fails where the kit does not fit", () => {
    // Its window could not be cut, and that stops no folding.
    const lip = litKit({ insert: { ...WINDOW, lip: 29 } });
    expect(valueFrom(CUT_WAY.revision(lip))).toBe(valueFrom(CUT_WAY.revision(litKit())));
    expect(failureIn(CUT_WAY.revision(madeKit({ book: { leafWidth: 30 } })))).toMatchObject({ kind: "flap-in-gutter" });
  });
});
