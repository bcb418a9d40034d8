import { describe, expect, it } from "vitest";
import { doItem } from "../../../src/core/bench/item-done.ts";
import { isDone, isFinished, openBefore, placeAfter, placeBeside, placeNow } from "../../../src/core/bench/moving.ts";
import type { Place } from "../../../src/core/bench/places.ts";
import { type Progress, showPlace, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { madeKit } from "../kit/made-kit.ts";
import { begin, leafPlace, madePlan } from "./made.ts";

// By hand: leaves 20 and 21 of 40 are lost.
const plan = madePlan(madeKit(), { lostLeaves: [20, 21].map(leafNumber) });
const leaf = (number: number): Place => leafPlace(plan, number);
const name = ({ leaf: number, item }: Place): string => item?.name ?? String(number);
const done = (progress: Progress, places: readonly Place[]): Progress =>
  places.reduce((one, { leaf: at, item }) => (item ? doItem(one, item) : tickUntimed(one, [at])), progress);

describe("placeNow(plan, progress)", () => {
  it("is the work that progress names, and the leaf where it names none or one that is none of the plan's", () => {
    expect(placeNow(plan, begin(leafNumber(7)))).toBe(leaf(7));
    const gauge = plan.places.find((place) => place.item?.name === "step gauge")!;
    expect(placeNow(plan, showPlace(begin(), gauge))).toBe(gauge);
    expect(placeNow(plan, { at: leafNumber(7), item: "score 9 1-4" })).toBe(leaf(7));
  });
});

describe("moving", () => {
  it("begins with the preparing, steps over lost leaves and stops at both ends", () => {
    const first = plan.places[0]!;
    expect(name(first)).toBe("step check");
    expect(placeBeside(plan, first, -1)).toBe(first);
    expect(name(placeBeside(plan, first, 1))).toBe("step find");
    expect([placeBeside(plan, leaf(19), 1), placeBeside(plan, leaf(22), -1)].map(name)).toEqual(["22", "19"]);
    expect([placeBeside(plan, leaf(7), 1), placeBeside(plan, leaf(7), -1)].map(name)).toEqual(["8", "6"]);
    const last = plan.places.at(-1)!;
    expect(placeBeside(plan, last, 1)).toBe(last);
  });

  it("goes on from the last place to the first that is open, leaf or not, and stays when there is none", () => {
    const last = plan.places.at(-1)!;
    const open = plan.places.filter((place) => ["step gauge", "30"].includes(name(place)));
    const most = done(
      begin(),
      plan.places.filter((place) => !open.includes(place)),
    );
    expect(name(placeAfter(plan, most, leaf(19)))).toBe("22");
    expect(name(placeAfter(plan, most, last))).toBe("step gauge");
    expect(name(placeAfter(plan, done(most, [open[0]!]), last))).toBe("30");
    expect([isFinished(plan, most), isFinished(plan, done(most, [open[0]!]))]).toEqual([false, false]);
    const all = done(most, open);
    expect(isFinished(plan, all)).toBe(true);
    expect(placeAfter(plan, all, last)).toBe(last);
    expect(openBefore(plan, most, leaf(30)).map(name)).toEqual(["step gauge"]);
    expect(openBefore(plan, most, leaf(31)).map(name)).toEqual(["step gauge", "30"]);
    expect(openBefore(plan, all, last)).toEqual([]);
  });

  it("knows done leaves and done work", () => {
    const [check] = plan.places;
    expect([isDone(begin(), check!), isDone(done(begin(), [check!]), check!)]).toEqual([false, true]);
    expect([isDone(begin(), leaf(5)), isDone(done(begin(), [leaf(5)]), leaf(5))]).toEqual([false, true]);
  });
});
