import { describe, expect, it } from "vitest";
import { calibrate } from "../../../src/core/bench/calibration.ts";
import { CORNER_WAY } from "../../../src/core/bench/corner-way.ts";
import { openDesk } from "../../../src/core/bench/desk.ts";
import { recover } from "../../../src/core/bench/recovery.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { type KitChanges, LIGHT } from "../kit/made-kit.ts";
import { cornerPlan } from "./corner-plan.ts";
import { RATES } from "./made-rates.ts";

const [, , BARS] = SILHOUETTES;

describe("CORNER_WAY.plan(kit)", () => {
  it("has every folded leaf, the steps beside them, and the kit's batches", () => {
    const plan = cornerPlan();
    expect(plan.stops).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
    // By hand: 112 picture leaves in batches of at most 20 are six.
    expect(plan.batches.map(({ count }) => count)).toEqual([19, 18, 19, 19, 18, 19]);
    expect(plan.places.flatMap(({ leaf, item }) => (item ? [[leaf, item.name]] : []))).toEqual([
      [1, "step check"],
      [1, "step find"],
      [1, "step cornerGauge"],
      [120, "step hold"],
    ]);
  });

  it("by hand: what each leaf takes", () => {
    const { estimates } = cornerPlan({ rates: RATES });
    // A border leaf is turned and folded once over the card; leaf 60 has two marks and two folds; leaf 64, the 60th of the
    // picture, is a checkpoint, too.
    expect([1, 60, 64].map((leaf) => estimates.get(leafNumber(leaf)))).toEqual([22_000, 40_000, 60_000]);
  });

  it("marks at the step of the maker's ruler, with the picture where it was", () => {
    const { pattern } = cornerPlan({ units: "in" });
    expect(pattern.fit.markStep).toBeCloseTo(25.4 / 32, 9);
    expect(pattern.fit.head).toBe(50);
  });

  it("says why a kit cannot be laid out", () => {
    expect(failureIn(CORNER_WAY.plan(cornerKit({ light: LIGHT })))).toEqual({ kind: "needs-knife", part: "light" });
  });
});

describe("CORNER_WAY.revision(kit)", () => {
  it.each([
    ["lost leaves", { fit: { lostLeaves: [leafNumber(20)] } }, true],
    ["units", { units: "in" }, true],
    ["another place", { fit: { head: 51 } }, false],
    ["other border leaves", { fit: { corner: { levels: [1], empty: "half", dropped: [] } } }, false],
  ] as [string, KitChanges, boolean][])("with %s is the same: %s", (_, changes, same) => {
    const revision = valueFrom(CORNER_WAY.revision(cornerKit()));
    expect(valueFrom(CORNER_WAY.revision(cornerKit(changes))) === revision).toBe(same);
  });
});

describe("a leaf that is left out where corners are folded", () => {
  it("is the pattern of the kit with it lost, and names all leaves that are folded otherwise", () => {
    const plan = cornerPlan({}, BARS);
    const { plan: after, changed } = valueFrom(recover(plan, [leafNumber(60)]));
    expect(after.pattern).toEqual(cornerPattern(cornerKit({ fit: { lostLeaves: [leafNumber(60)] } }, BARS)));
    const fold = (of: typeof plan, leaf: number) => of.pattern.leaves.find((one) => one.leaf === leaf)!.fold;
    const differing = after.stops.filter(
      (leaf) => JSON.stringify(fold(plan, leaf)) !== JSON.stringify(fold(after, leaf)),
    );
    expect(changed).toEqual(differing);
    expect(changed.length).toBeGreaterThan(10);
    expect(Math.min(...changed)).toBeGreaterThan(60);
  });

  it("comes back with the leaves that were lost before it", () => {
    const plan = cornerPlan({}, BARS);
    const lost = valueFrom(recover(plan, [leafNumber(60)]));
    expect(valueFrom(recover(lost.plan, [])).plan.pattern).toEqual(plan.pattern);
  });
});

describe("a first batch that is measured where corners are folded", () => {
  const plan = cornerPlan();
  // 120 leaves are 14 mm thick.
  const caliper = 14 / 120;

  it("by hand: ten leaves, eight of which have a corner where they are pressed", () => {
    // Ten bodies, and eight corners of 1.5 leaf thicknesses each.
    const thickness = caliper * (10 + 8 * 1.5);
    const result = calibrate(plan, { leaves: 10, flaps: 8, thickness });
    if (!("calibration" in result)) throw new Error("refused");
    expect(result.calibration.flapBulk).toBeCloseTo(1.5, 9);
    const fitted = cornerPattern(cornerKit({ fit: { flapBulk: result.calibration.flapBulk } }));
    expect(result.calibration).toMatchObject({
      opening: fitted.fit.opening,
      restingOpening: fitted.fit.restingOpening,
      holdWidth: fitted.fit.holdWidth,
      holds: fitted.fit.restingOpening <= fitted.fit.opening,
    });
  });

  it("says between what it may be, with the corners that are there", () => {
    const result = calibrate(plan, { leaves: 10, flaps: 8, thickness: 0.5 });
    // Twelve leaf thicknesses for a corner are the most.
    const most = caliper * (10 + 8 * 12);
    expect(result).toEqual({ bounds: { leaves: 10, least: 1.2, most: expect.closeTo(most, 9) } });
  });

  it("changes the opening at which the desk says that the book rests", () => {
    const desk = valueFrom(openDesk(cornerKit(), {}, { units: "mm", way: CORNER_WAY }));
    const measured = { leaves: 10, flaps: 8, thickness: caliper * (10 + 8 * 6) };
    const kept = valueFrom(openDesk(cornerKit(), {}, { units: "mm", way: CORNER_WAY }, { ...desk.progress, measured }));
    expect(kept.plan.kit.fit.flapBulk).toBeCloseTo(6, 9);
    expect(kept.plan.holding.restingOpening).toBeGreaterThan(desk.plan.holding.restingOpening);
    expect(kept.changedSince).toBe(false);
  });
});
