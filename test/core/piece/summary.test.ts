import { describe, expect, it } from "vitest";
import {
  beginProgress,
  type Progress,
  passGate,
  showLeaf,
  showPlace,
  tickUntimed,
} from "../../../src/core/bench/progress.ts";
import { tickPlace } from "../../../src/core/bench/tick-place.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { summaryOf } from "../../../src/core/piece/summary.ts";
import { madePlan } from "../bench/made.ts";
import { madeKit } from "../kit/made-kit.ts";

const PLAN = madePlan();
const FRESH = beginProgress({ kit: "made", fit: "", revision: "r", at: leafNumber(1) });
const all = (progress: Progress = FRESH): Progress => PLAN.places.reduce(tickPlace, progress);

describe("summaryOf(desk)", () => {
  it("is nothing done at first, and all at the end", () => {
    expect(summaryOf({ plan: PLAN, progress: FRESH })).toMatchObject({ done: 0, of: 40, percent: 0 });
    expect(summaryOf({ plan: PLAN, progress: all() })).toMatchObject({ done: 40, of: 40, percent: 100 });
  });

  it("is not 100 % while anything is open, however little", () => {
    const open = all();
    const last = { ...open, ticks: open.ticks.slice(1) };
    expect(summaryOf({ plan: PLAN, progress: last }).percent).toBe(99);
  });

  it("grows by the estimated time, not by how many places there are", () => {
    const half = tickUntimed(FRESH, PLAN.stops.slice(0, 20));
    const { percent } = summaryOf({ plan: PLAN, progress: half });
    const minutes = (leaves: readonly number[]): number =>
      leaves.reduce((sum, leaf) => sum + PLAN.estimates.get(leafNumber(leaf))!, 0);
    const others = PLAN.places.reduce((sum, { item }) => sum + (item?.estimate ?? 0), 0);
    expect(percent).toBe(Math.floor((100 * minutes(PLAN.stops.slice(0, 20))) / (minutes(PLAN.stops) + others)));
  });

  it("says the page that the leaf on the bench has, and none for work beside the leaves", () => {
    const book = { ...madeKit().book, pageOneLeaf: leafNumber(1) };
    const at = summaryOf({ plan: { ...PLAN, kit: { ...PLAN.kit, book } }, progress: showLeaf(FRESH, leafNumber(9)) });
    // Leaf 9 of a book whose first leaf is page 1 has page 17 on its front.
    expect([at.leaf, at.page]).toEqual([9, 17]);
    const item = PLAN.places.find((place) => place.item)!;
    const beside = summaryOf({ plan: PLAN, progress: showPlace(FRESH, item) });
    expect([beside.leaf, beside.page]).toEqual([undefined, undefined]);
  });

  it("does not count what was merely answered", () => {
    expect(summaryOf({ plan: PLAN, progress: passGate(FRESH, "batch 1") }).percent).toBe(0);
  });
});
