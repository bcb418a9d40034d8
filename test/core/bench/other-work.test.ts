import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";
import { madePlan, SLANTING } from "./made.ts";

/** Names of the other work by the leaf that it stands beside, with minutes. */
function itemsOf(kit: Kit): [number, string, number][] {
  return madePlan(kit).places.flatMap(({ leaf, item }) =>
    item ? [[leaf, item.name, item.estimate / 60_000] as [number, string, number]] : [],
  );
}

describe("otherWork(kit, pattern, batches)", () => {
  // By hand: the square of 24 mm stands on leaves 11 to 30 of 40, at 6 s a line. Leaf 31 is deeper all the way down, so that
  // it leaves 30 loose; nothing comes after 40, which is tacked with the last batch. The batches are 5 to 20 and 21 to 36.
  it("has the preparing and each line on each run of leaves before the first leaf, tacks after their batch", () => {
    expect(itemsOf(madeKit())).toEqual([
      [1, "step check", 0],
      [1, "step find", 0],
      [1, "step gauge", 0],
      [1, "score 1 11-30", 2],
      [1, "score 2 1-40", 4],
      [40, "tack batch 2", 0.2],
      [40, "step hold", 0],
    ]);
  });

  // By hand: six parts of the window at a minute each.
  it("has the window and the light after the last leaf, the holder cut before it is used", () => {
    const end = itemsOf(litKit()).filter(([leaf]) => leaf === 60);
    expect(end.slice(1)).toEqual([
      [60, "step cut", 6],
      ...["hold", "frame", "glaze", "hang", "close", "light"].map((id) => [60, `step ${id}`, 0]),
    ]);
  });

  it("stands before the first leaf that is folded", () => {
    const kit = madeKit({ fit: { borderLeaves: [0, 4], lostLeaves: [leafNumber(1)] } });
    expect(itemsOf(kit)[0]).toEqual([2, "step check", 0]);
  });

  it("cuts each notch of a batch before its tacks, and each of them once", () => {
    const { places, pattern, batches } = madePlan(SLANTING);
    const items = places.flatMap(({ item }) => (item?.kind === "leaves" ? [item] : []));
    const notched = items.filter(({ work }) => work === "notch");
    expect(notched.flatMap(({ leaves }) => leaves)).toEqual(pattern.pocket!.notches.map(({ leaf }) => leaf));
    expect(notched.length).toBeGreaterThan(1);
    for (const { batch, leaves } of items) {
      const from = batches[batch.number - 2]?.last.leaf ?? 0;
      const to = batch.number === batches.length ? 60 : batch.last.leaf;
      expect(leaves.every((leaf) => leaf > from && leaf <= to)).toBe(true);
    }
    const of = (number: number) => items.filter(({ batch }) => batch.number === number).map(({ work }) => work);
    expect(batches.map(({ number }) => of(number)).filter(({ length }) => length > 1)).toSatisfy((all: string[][]) =>
      all.every((one) => one.join() === "notch,tack"),
    );
  });
});
