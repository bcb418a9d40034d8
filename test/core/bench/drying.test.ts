import { describe, expect, it } from "vitest";
import { dryingNow, dryNow } from "../../../src/core/bench/drying.ts";
import { doItem, undoItem } from "../../../src/core/bench/item-done.ts";
import type { Progress } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { litKit } from "../kit/made-kit.ts";
import { begin, madePlan } from "./made.ts";

const MINUTE = 60_000;
const LATER = 1e12 + 11 * MINUTE;
const plan = madePlan(litKit({ fit: { tackWith: "glue" } }));
const item = (name: string) => plan.places.find((place) => place.item?.name === name)!.item!;
/** At some time something was done. */
const at = (minutes: number) => ({ ...begin(), clock: { worked: 0, seen: 1e12 + minutes * MINUTE, ticked: 0 } });

describe("dryingNow(plan, progress, now)", () => {
  // By hand: the made kit's glue dries in 30 minutes, its frame in 720.
  it.each([
    ["tack batch 1", 30],
    ["step frame", 720],
  ])("tells of %s until it is dry, %d minutes later", (name, minutes) => {
    const glued = doItem(at(0), item(name));
    const dry = 1e12 + minutes * MINUTE;
    expect(dryingNow(plan, glued, 1e12 + 1)).toEqual([{ item: item(name), dry }]);
    expect(dryingNow(plan, glued, dry - 1)).toEqual([{ item: item(name), dry }]);
    expect(dryingNow(plan, glued, dry)).toEqual([]);
  });

  it("tells of all that dries, the soonest first, and of nothing that is undone", () => {
    const frame = doItem(at(0), item("step frame"));
    const both = doItem({ ...frame, clock: at(10).clock }, item("tack batch 3"));
    const names = (progress: Progress) =>
      dryingNow(plan, progress, LATER).map((one) => [one.item.name, one.dry - 1e12]);
    expect(names(both)).toEqual([
      ["tack batch 3", 40 * MINUTE],
      ["step frame", 720 * MINUTE],
    ]);
    expect(names(undoItem(both, item("tack batch 3")))).toEqual([["step frame", 720 * MINUTE]]);
    expect(names(undoItem(both, item("step gauge")))).toEqual(names(both));
  });

  it("counts from the last time that something was glued", () => {
    const once = doItem(at(0), item("step frame"));
    const again = doItem({ ...undoItem(once, item("step frame")), clock: at(5).clock }, item("step frame"));
    expect(dryingNow(plan, again, LATER)).toEqual([{ item: item("step frame"), dry: 1e12 + 725 * MINUTE }]);
  });

  it("does not believe a time to come", () => {
    expect(dryingNow(plan, doItem(at(1), item("step frame")), 1e12)).toEqual([]);
    expect(dryingNow(plan, { ...begin(), glued: [{ item: "step frame", at: 1e308 }] }, 1e12)).toEqual([]);
  });

  it("tells of nothing where nothing was glued, or what was is none of the work any more", () => {
    expect(dryingNow(plan, doItem(at(0), item("step gauge")), 1e12)).toEqual([]);
    const other = madePlan(litKit({ insert: undefined, fit: { tackWith: "glue", lostLeaves: [leafNumber(20)] } }));
    expect(dryingNow(other, doItem(at(0), item("step frame")), 1e12)).toEqual([]);
  });
});

describe("dryNow(plan, progress, now)", () => {
  const tacked = doItem(at(0), item("tack batch 1"));
  const dry = 1e12 + 30 * MINUTE;

  it("tells what became dry since she last did something, and no longer once she goes on", () => {
    expect(dryNow(plan, tacked, dry - 1)).toEqual([]);
    expect(dryNow(plan, tacked, dry)).toEqual([{ item: item("tack batch 1"), dry }]);
    expect(dryNow(plan, { ...tacked, clock: at(29).clock }, dry + 600 * MINUTE)).toHaveLength(1);
    expect(dryNow(plan, { ...tacked, clock: at(30).clock }, dry + 600 * MINUTE)).toEqual([]);
  });
});
