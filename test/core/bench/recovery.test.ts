import { describe, expect, it } from "vitest";
import { changedLeaves, recover } from "../../../src/core/bench/recovery.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { patternOf } from "../pattern/computed.ts";
import { fixturePlan } from "./made.ts";

describe("recover(plan, lost)", () => {
  it.each([
    ["little-gull", [40]],
    ["harbour-moon", [60, 61, 120]],
    ["tide-and-lamp", [70]],
  ] as const)("%s without leaves %j is the pattern of the kit with them lost", (slug, leaves) => {
    const lost = leaves.map(leafNumber);
    const plan = fixturePlan(slug);
    const result = valueFrom(recover(plan, lost.toReversed()));
    const kit = fixtureKit(slug);
    const expected = patternOf({ ...kit, insert: undefined, fit: { ...kit.fit, lostLeaves: lost } });
    expect(result.plan.pattern).toEqual(expected);
    expect(result.plan.stops).toEqual(plan.stops.filter((leaf) => !lost.includes(leaf)));
  });

  it("changes no leaf before the lost one, and every other leaf is named when its work changes", () => {
    const plan = fixturePlan("harbour-moon");
    const result = valueFrom(recover(plan, [leafNumber(60)]));
    expect(Math.min(...result.changed)).toBeGreaterThan(60);
    const work = (one: typeof plan, leaf: number) => {
      const found = one.pattern.leaves.find((other) => other.leaf === leaf)!;
      const notch = one.pattern.pocket!.notches.find((other) => other.leaf === leaf);
      return JSON.stringify([found.spans, found.cuts, notch?.from, notch?.to, notch?.depth]);
    };
    const differing = result.plan.stops.filter((leaf) => work(plan, leaf) !== work(result.plan, leaf));
    expect(differing.length).toBeGreaterThan(50);
    expect(result.changed).toEqual(differing);
  });

  it("counts a leaf whose notch alone is another as changed", () => {
    const { pattern } = fixturePlan("harbour-moon");
    const pocket = pattern.pocket!;
    const [first, second, ...rest] = pocket.notches;
    const notches = [first!, { ...second!, depth: second!.depth + 0.5 }, ...rest];
    expect(changedLeaves(pattern, { ...pattern, pocket: { ...pocket, notches } })).toEqual([second!.leaf]);
  });

  it("is undone by the leaves that were lost before it", () => {
    const plan = fixturePlan("little-gull");
    const lost = valueFrom(recover(plan, [leafNumber(40)]));
    const back = valueFrom(recover(lost.plan, []));
    expect(back.plan.pattern).toEqual(plan.pattern);
    expect(back.changed).toEqual(lost.changed);
    expect(changedLeaves(plan.pattern, back.plan.pattern)).toEqual([]);
  });

  it("says why a border leaf cannot be left out, and when too few remain", () => {
    const plan = fixturePlan("little-gull");
    expect(failureIn(recover(plan, [leafNumber(3)]))).toMatchObject({ kind: "lost-leaf-outside", leaf: 3 });
    const { firstLeaf, lastLeaf } = plan.pattern.fit;
    const all = Array.from({ length: lastLeaf - firstLeaf }, (_, i) => leafNumber(firstLeaf + i));
    expect(failureIn(recover(plan, all))).toMatchObject({ kind: "too-few-remain", lost: all.length });
  });
});
