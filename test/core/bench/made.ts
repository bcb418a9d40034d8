import type { BenchPlan } from "../../../src/core/bench/bench-plan.ts";
import { CUT_WAY } from "../../../src/core/bench/cut-way.ts";
import { benchKit } from "../../../src/core/bench/fit-key.ts";
import type { Place } from "../../../src/core/bench/places.ts";
import { beginProgress, type Progress } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { fc } from "../../seed.ts";
import { valueFrom } from "../findings/made.ts";
import { LIGHT, litKit, madeKit, WELL } from "../kit/made-kit.ts";

/** A kit by hand laid out for the bench, in its own units: leaves 1 to 40, the picture on 5 to 36 in batches of 16. */
export function madePlan(kit: Kit = madeKit(), refit: Refit = {}): BenchPlan<Pattern> {
  return valueFrom(CUT_WAY.plan(benchKit(kit, refit, kit.units)));
}

/** The place of a leaf itself. */
export function leafPlace({ places }: BenchPlan, leaf: number): Place {
  return places.find((place) => place.leaf === leaf && !place.item)!;
}

export function begin(at = leafNumber(1)): Progress {
  return beginProgress({ kit: "little-gull", fit: "", revision: "r1", at });
}

/** A slanting well, so that every leaf has marks of its own, and a light for which leaves are notched. */
export const SLANTING = litKit({
  insert: undefined,
  fit: { markStep: 0.1 },
  light: { ...LIGHT, diameter: 30, height: 30, setback: 2 },
  picture: {
    ...WELL,
    shapes: [
      {
        level: 1,
        rule: "nonzero",
        rings: [
          [
            [2, 5],
            [98, 30],
            [98, 95],
            [2, 95],
          ],
        ],
      },
      WELL.shapes[1]!,
    ],
  },
});

const anyLeaf = fc.integer({ min: 1, max: 3000 }).map(leafNumber);
const ticks = fc
  .uniqueArray(fc.record({ leaf: anyLeaf, took: fc.integer({ min: 0, max: 1e7 }) }), {
    selector: (tick) => tick.leaf,
    maxLength: 12,
  })
  .map((list) => list.toSorted((a, b) => a.leaf - b.leaf));
const amount = fc.integer({ min: 0, max: 1e13 });

/** Any progress that the page can reach, and more. */
export const anyProgress: fc.Arbitrary<Progress> = fc.record({
  kit: fc.string(),
  fit: fc.string(),
  revision: fc.string(),
  at: anyLeaf,
  item: fc.option(fc.string(), { nil: undefined }),
  ticks,
  passed: fc.array(fc.string(), { maxLength: 4 }),
  lost: fc.uniqueArray(
    fc.record({ leaf: anyLeaf, cleared: ticks, undone: fc.option(fc.array(fc.string()), { nil: undefined }) }),
    { selector: (one) => one.leaf, maxLength: 4 },
  ),
  measured: fc.option(
    fc.record({
      leaves: anyLeaf,
      thickness: fc.double({ min: 0.1, max: 500, noNaN: true }),
      flaps: fc.option(anyLeaf, { nil: undefined }),
    }),
    { nil: undefined },
  ),
  glued: fc.option(fc.array(fc.record({ item: fc.string(), at: amount }), { maxLength: 3 }), { nil: undefined }),
  sitting: fc.option(fc.record({ began: amount, worked: amount, until: fc.option(amount, { nil: undefined }) }), {
    nil: undefined,
  }),
  clock: fc.record({ worked: amount, seen: amount, ticked: amount }),
});
