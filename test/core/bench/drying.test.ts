import { describe, expect, it } from "vitest";
import { dryingNow } from "../../../src/core/bench/drying.ts";
import { doItem, undoItem } from "../../../src/core/bench/item-done.ts";
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
    expect(dryingNow(plan, glued, 1e12 + 1)).toEqual({ item: item(name), dry });
    expect(dryingNow(plan, glued, dry - 1)?.dry).toBe(dry);
    expect(dryingNow(plan, glued, dry)).toBeUndefined();
  });

  it("tells of what was glued last, and of nothing once that is undone", () => {
    const first = doItem(at(0), item("tack batch 1"));
    const both = doItem({ ...first, clock: at(10).clock }, item("tack batch 3"));
    expect(dryingNow(plan, both, LATER)?.dry).toBe(1e12 + 40 * MINUTE);
    expect(dryingNow(plan, undoItem(both, item("tack batch 3")), LATER)).toBeUndefined();
    expect(dryingNow(plan, undoItem(both, item("step gauge")), LATER)?.item.name).toBe("tack batch 3");
  });

  it("does not believe a time to come", () => {
    expect(dryingNow(plan, doItem(at(1), item("step frame")), 1e12)).toBeUndefined();
    expect(dryingNow(plan, { ...begin(), glued: { item: "step frame", at: 1e308 } }, 1e12)).toBeUndefined();
  });

  it("tells of nothing where nothing was glued, or what was is none of the work any more", () => {
    expect(dryingNow(plan, doItem(at(0), item("step gauge")), 1e12)).toBeUndefined();
    const other = madePlan(litKit({ insert: undefined, fit: { tackWith: "glue", lostLeaves: [leafNumber(20)] } }));
    expect(dryingNow(other, doItem(at(0), item("step frame")), 1e12)).toBeUndefined();
  });
});
