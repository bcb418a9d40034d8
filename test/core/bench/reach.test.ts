import { describe, expect, it } from "vitest";
import { doItem } from "../../../src/core/bench/item-done.ts";
import { type Progress, showPlace, type Tick, tickUntimed } from "../../../src/core/bench/progress.ts";
import { reachBy } from "../../../src/core/bench/reach.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { begin, madePlan } from "./made.ts";

const NOW = 1e12;
const leaves = Array.from({ length: 20 }, (_, i) => leafNumber(i + 1));
// Each leaf takes 100 s by the estimate.
const plan = {
  estimates: new Map(leaves.map((leaf) => [leaf, 100_000] as const)),
  places: leaves.map((leaf) => ({ leaf, item: undefined })),
};
const timed = (count: number, took: number): Tick[] => leaves.slice(0, count).map((leaf) => ({ leaf, took }));
const by = (progress: Progress, seconds: number, now = NOW) => reachBy(plan, progress, NOW + 1000 * seconds, now);

describe("reachBy(plan, progress, until, now)", () => {
  it("is the last leaf that is folded by then, by the estimate", () => {
    expect(by(begin(), 350)).toEqual({ leaf: 3, leaves: 3, end: false, own: false });
    expect(by(begin(), 400)).toMatchObject({ leaf: 4, leaves: 4 });
    expect(by(begin(leafNumber(11)), 350)).toMatchObject({ leaf: 13, leaves: 3 });
  });

  it("follows her own pace once it is known", () => {
    const slow = { ...begin(leafNumber(6)), ticks: timed(5, 200_000) };
    expect(by(slow, 450)).toEqual({ leaf: 7, leaves: 2, end: false, own: true });
  });

  it("counts what she has worked on this leaf already", () => {
    const begun = { ...begin(), clock: { worked: 60_000, seen: NOW, ticked: 0 } };
    expect(by(begun, 250)).toMatchObject({ leaves: 3 });
    // A minute later she has worked two.
    expect(by(begun, 250, NOW + 60_000)).toMatchObject({ leaves: 3 });
    expect(by({ ...begun, clock: { ...begun.clock, seen: 0 } }, 250)).toMatchObject({ leaves: 2 });
  });

  it("passes over what is done, and tells when nothing is left to do", () => {
    const some = tickUntimed(begin(), [2, 3].map(leafNumber));
    expect(by(some, 250)).toMatchObject({ leaf: 4, leaves: 2 });
    expect(by(begin(leafNumber(19)), 200)).toMatchObject({ leaf: 20, leaves: 2, end: true });
  });

  it("is no leaf where the time is too short", () => {
    expect(by(begin(), 99)).toEqual({ leaf: undefined, leaves: 0, end: false, own: false });
    expect(by(begin(), -500)).toMatchObject({ leaf: undefined, leaves: 0 });
  });

  it("takes other work in its turn", () => {
    const line = madePlan().places.find(({ item }) => item?.name === "score 2 1-40")!.item!;
    const both = { ...plan, places: [{ leaf: leafNumber(1), item: line }, ...plan.places] };
    const atLine = showPlace(begin(), both.places[0]!);
    // By hand: forty leaves at 6 s are 240 s.
    expect(reachBy(both, atLine, NOW + 450_000, NOW)).toMatchObject({ leaf: 2, leaves: 2 });
    expect(reachBy(both, doItem(atLine, line), NOW + 450_000, NOW)).toMatchObject({ leaf: 4, leaves: 4 });
  });
});
