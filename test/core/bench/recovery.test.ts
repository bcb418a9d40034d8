import { describe, expect, it } from "vitest";
import { changedLeaves, recover, withLost } from "../../../src/core/bench/recovery.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Pattern, PatternLeaf } from "../../../src/core/pattern/pattern.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { madeKit } from "../kit/made-kit.ts";
import { patternOf } from "../pattern/computed.ts";
import { madePattern, madePocket } from "../plan/made-pattern.ts";
import { madePlan, SLANTING } from "./made.ts";

describe("recover(plan, lost)", () => {
  it.each([
    ["made", madeKit(), [20]],
    ["lit", SLANTING, [21, 22, 40]],
  ] as const)("%s without leaves %j is the pattern of the kit with them lost", (_, kit, leaves) => {
    const lost = leaves.map(leafNumber);
    const plan = madePlan(kit);
    const result = valueFrom(recover(plan, lost.toReversed()));
    const expected = patternOf({ ...kit, fit: { ...kit.fit, lostLeaves: lost } });
    expect(result.plan.pattern).toEqual(expected);
    expect(result.plan.stops).toEqual(plan.stops.filter((leaf) => !lost.includes(leaf)));
  });

  it("changes no leaf before the lost one, and every other leaf is named when its work changes", () => {
    const plan = madePlan(SLANTING);
    const result = valueFrom(recover(plan, [leafNumber(20)]));
    expect(Math.min(...result.changed)).toBeGreaterThan(20);
    const work = (one: typeof plan, leaf: number) => {
      const found = one.pattern.leaves.find((other) => other.leaf === leaf)!;
      const notch = one.pattern.pocket!.notches.find((other) => other.leaf === leaf);
      return JSON.stringify([found.spans, found.cuts, notch?.from, notch?.to, notch?.depth]);
    };
    const differing = result.plan.stops.filter((leaf) => work(plan, leaf) !== work(result.plan, leaf));
    expect(differing.length).toBeGreaterThan(5);
    expect(result.changed).toEqual(differing);
  });

  it("counts a leaf whose notch alone is another as changed", () => {
    const { pattern } = madePlan(SLANTING);
    const pocket = pattern.pocket!;
    const [first, second, ...rest] = pocket.notches;
    const notches = [first!, { ...second!, depth: second!.depth + 0.5 }, ...rest];
    expect(changedLeaves(pattern, { ...pattern, pocket: { ...pocket, notches } })).toEqual([second!.leaf]);
  });

  it("is undone by the leaves that were lost before it", () => {
    const plan = madePlan(SLANTING);
    const lost = valueFrom(recover(plan, [leafNumber(20)]));
    const back = valueFrom(recover(lost.plan, []));
    expect(back.plan.pattern).toEqual(plan.pattern);
    expect(back.changed).toEqual(lost.changed);
    expect(changedLeaves(plan.pattern, back.plan.pattern)).toEqual([]);
  });

  it("says why a border leaf cannot be left out, and when too few remain", () => {
    const plan = madePlan();
    expect(failureIn(recover(plan, [leafNumber(3)]))).toMatchObject({ kind: "lost-leaf-outside", leaf: 3 });
    const { firstLeaf, lastLeaf } = plan.pattern.fit;
    const all = Array.from({ length: lastLeaf - firstLeaf }, (_, i) => leafNumber(firstLeaf + i));
    expect(failureIn(recover(plan, all))).toMatchObject({ kind: "too-few-remain", lost: all.length });
  });
});

describe("withLost(kit, lost)", () => {
  it("lists lost leaves in book order, and leaves the given list as it is", () => {
    const lost = [30, 4, 20].map(leafNumber);
    expect(withLost(madeKit(), lost).fit.lostLeaves).toEqual([4, 20, 30]);
    expect(lost).toEqual([30, 4, 20]);
  });
});

describe("changedLeaves(before, after)", () => {
  const before = madePattern();
  const changed = (at: number, change: (leaf: PatternLeaf) => PatternLeaf): Pattern => ({
    ...before,
    leaves: before.leaves.map((leaf) => (leaf.leaf === at ? change(leaf) : leaf)),
  });
  const cutAt =
    (by: number) =>
    (leaf: PatternLeaf): PatternLeaf => ({ ...leaf, cuts: leaf.cuts.map((cut) => ({ ...cut, at: cut.at + by })) });

  it.each([
    ["marked otherwise", changed(6, cutAt(1)), [6]],
    ["the same to a thousandth", changed(6, cutAt(0.0004)), []],
    ["another by more", changed(6, cutAt(0.001)), [6]],
    ["folded otherwise", changed(7, (leaf) => ({ ...leaf, spans: leaf.spans.slice(1) })), [7]],
    ["glued otherwise", changed(7, (leaf) => ({ ...leaf, tacks: [{ from: 0, to: 9 }] })), []],
    ["no longer there", { ...before, leaves: before.leaves.filter(({ leaf }) => leaf !== 6) }, []],
    ["a border leaf", changed(8, cutAt(1)), []],
    ["a notched one", { ...before, pocket: madePocket(5) }, [5]],
  ] as [string, Pattern, number[]][])("a leaf that is %s", (_, after, leaves) => {
    expect(changedLeaves(before, after)).toEqual(leaves);
  });
});
