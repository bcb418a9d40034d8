import { describe, expect, it } from "vitest";
import { Trials } from "../../../src/core/refit/trials.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";

/** How often something can be asked before there is no more trying; the made kit fits its book. */
function timesOf(leaves: number, ask: (trials: Trials, kit: ReturnType<typeof madeKit>) => boolean): number {
  const trials = new Trials({ head: 0, tail: 0 });
  const kit = madeKit({ book: { leaves, lastPage: 8 }, fit: { borderLeaves: [4, 4] } });
  let times = 0;
  while (times < 10_000 && ask(trials, kit)) times += 1;
  return times;
}

describe("Trials", () => {
  // By hand: 9000 leaves are 225 books of 40 and 3 of 3000; forty layouts count as one book.
  it.each([
    [40, 225],
    [3000, 3],
  ])("computes no more patterns than 9000 leaves make: of %d leaves %d", (leaves, times) => {
    expect(timesOf(leaves, (trials, kit) => trials.whole(kit) !== undefined)).toBe(times);
  });

  // 40 and 200 leaves go 37 times into 9000.
  it("counts a light and a window as 200 leaves", () => {
    const trials = new Trials({ head: 0, tail: 0 });
    let times = 0;
    while (times < 100 && trials.whole(litKit({ book: { leaves: 40, lastPage: 80 } }))) times += 1;
    expect(times).toBe(37);
  });

  it.each([
    [600, 600],
    [3000, 120],
  ])("lays out forty times as many: of %d leaves %d", (leaves, times) => {
    expect(timesOf(leaves, (trials, kit) => trials.laysOut(kit))).toBe(times);
  });
});
