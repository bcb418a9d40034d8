import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madePlan } from "./made.ts";

/** Names of the other work by the leaf that it stands beside, with minutes. */
function itemsOf(kit: Kit): [number, string, number][] {
  return madePlan(kit).places.flatMap(({ leaf, item }) =>
    item ? [[leaf, item.name, item.estimate / 60_000] as [number, string, number]] : [],
  );
}

describe("otherWork(kit, pattern)", () => {
  // By hand: the square of 24 mm stands on leaves 11 to 30 of 40, at 6 s a line.
  it("has the preparing and each line on each run of leaves before the first leaf", () => {
    expect(itemsOf(madeKit())).toEqual([
      [1, "step check", 0],
      [1, "step find", 0],
      [1, "step gauge", 0],
      [1, "score 1 11-30", 2],
      [1, "score 2 1-40", 4],
    ]);
  });

  it("stands before the first leaf that is folded", () => {
    const kit = madeKit({ fit: { borderLeaves: [0, 4], lostLeaves: [leafNumber(1)] } });
    expect(itemsOf(kit)[0]).toEqual([2, "step check", 0]);
  });
});
