import { describe, expect, it } from "vitest";
import { bringBack, loseLeaf, lostOf } from "../../../src/core/bench/lost-leaves.ts";
import { isTicked, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fc } from "../../seed.ts";
import { begin } from "./made.ts";

describe("a lost leaf", () => {
  const folded = tickUntimed(begin(), [10, 11, 12, 13, 14, 15].map(leafNumber));

  it("takes its own tick and those of changed leaves along, and brings them back", () => {
    const lost = loseLeaf(folded, leafNumber(12), [13, 15, 40].map(leafNumber));
    expect(lost.ticks.map((tick) => tick.leaf)).toEqual([10, 11, 14]);
    expect(lost.lost).toEqual([{ leaf: 12, cleared: [12, 13, 15].map((leaf) => ({ leaf, took: 0 })) }]);
    expect(bringBack(lost, leafNumber(12), [13, 15, 40].map(leafNumber))).toEqual(folded);
  });

  it("does not bring ticks back that were folded with other leaves lost", () => {
    // 12 is lost, then 14: 15's first tick was for marks without 12, its second for marks without 12 and 14.
    const both = loseLeaf(
      tickUntimed(loseLeaf(folded, leafNumber(12), [13, 14, 15].map(leafNumber)), [13, 14, 15].map(leafNumber)),
      leafNumber(14),
      [leafNumber(15)],
    );
    const firstBack = bringBack(both, leafNumber(12), [13, 15].map(leafNumber));
    expect(lostOf(firstBack)).toEqual([14]);
    expect(firstBack.ticks.map((tick) => tick.leaf)).toEqual([10, 11]);
    const allBack = bringBack(firstBack, leafNumber(14), [leafNumber(15)]);
    expect(allBack.ticks.map((tick) => tick.leaf)).toEqual([10, 11]);
    expect(allBack.lost).toEqual([]);
  });

  it("takes notches and tacks along and brings them back; other work stays", () => {
    const passed = ["step gauge", "score 1 10-15", "notch 11", "notch 13", "tack 12", "check 14", "tack 40"];
    const done = { ...folded, passed };
    const lost = loseLeaf(done, leafNumber(12), [13, 15].map(leafNumber));
    expect(lost.passed).toEqual(["step gauge", "score 1 10-15", "notch 11", "check 14", "tack 40"]);
    const back = bringBack(lost, leafNumber(12), [13, 15].map(leafNumber));
    expect([...back.passed].sort()).toEqual([...passed].sort());
    expect({ ...back, passed }).toEqual(done);
  });

  it("does not bring notches back that were cut with other leaves lost", () => {
    const done = { ...folded, passed: ["notch 13", "notch 15"] };
    const again = { ...loseLeaf(done, leafNumber(12), [13, 15].map(leafNumber)), passed: ["notch 13", "notch 15"] };
    const both = loseLeaf(again, leafNumber(14), [leafNumber(15)]);
    expect(both.passed).toEqual(["notch 13"]);
    const firstBack = bringBack(both, leafNumber(12), [13, 15].map(leafNumber));
    expect(firstBack.passed).toEqual([]);
    expect(bringBack(firstBack, leafNumber(14), [leafNumber(15)]).passed).toEqual([]);
  });

  it("leaves everything as it is where the leaf was not lost", () => {
    expect(bringBack(folded, leafNumber(12), [leafNumber(13)])).toBe(folded);
  });

  it("is undone exactly, one after another, in the order back", () => {
    const step = fc.record({
      leaf: fc.integer({ min: 1, max: 30 }).map(leafNumber),
      reach: fc.integer({ min: 0, max: 12 }),
    });
    const start = fc.uniqueArray(fc.integer({ min: 1, max: 42 }).map(leafNumber), { minLength: 1 });
    fc.assert(
      fc.property(start, fc.uniqueArray(step, { selector: (one) => one.leaf, minLength: 1 }), (ticked, steps) => {
        const begun = tickUntimed(begin(), ticked);
        const changed = ({ leaf, reach }: (typeof steps)[number]) =>
          Array.from({ length: reach }, (_, i) => leafNumber(leaf + 1 + i));
        const states = [begun];
        for (const one of steps) states.push(loseLeaf(states.at(-1)!, one.leaf, changed(one)));
        let now = states.at(-1)!;
        expect(steps.every((one) => !isTicked(now, one.leaf))).toBe(true);
        for (const [i, one] of [...steps.entries()].reverse()) {
          now = bringBack(now, one.leaf, changed(one));
          expect(now).toEqual(states[i]);
        }
      }),
      { numRuns: 200 },
    );
  });
});
