import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import { tickUntimed } from "../../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../../src/core/book/leaf-number.ts";
import { frontNow } from "../../../../src/output/drawing/bench/front-now.ts";
import { begin, madePlan } from "../../../core/bench/made.ts";
import { madeKit } from "../../../core/kit/made-kit.ts";

/** Forty leaves are 100 wide: each column is 2.5. */
function drawn(ticked: readonly number[], at: number, direction: "ltr" | "rtl" = "ltr") {
  const progress = tickUntimed(begin(leafNumber(at)), ticked.map(leafNumber));
  const plan = madePlan(madeKit({ book: { direction } }));
  const svg = frontNow(plan.pattern, plan, progress);
  const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement!;
  const all = [...root.getElementsByTagName("rect")];
  const of = (name: string) =>
    all
      .filter((one) => one.getAttribute("class") === name)
      .map((one) => [Number(one.getAttribute("x")), Number(one.getAttribute("width"))]);
  return { open: of("here-open"), now: of("here-now"), words: root.getAttribute("aria-label"), root };
}

describe("frontNow(front, plan, progress)", () => {
  it("pales what is not folded, and has a line at the leaf on the bench", () => {
    const { open, now } = drawn([1, 2, 3, 4, 11, 12], 5);
    expect(open).toEqual([
      [10, 15],
      [30, 70],
    ]);
    // In the middle of the fifth column: 11.25, less half the line's width.
    expect(now).toEqual([[10.05, 2.4]]);
  });

  it("begins at the right in a book that is read from the right", () => {
    expect(drawn([1, 2, 3, 4], 5, "rtl").open).toEqual([[0, 90]]);
  });

  it("tells in words how far the work is, and where", () => {
    const { root, words } = drawn([1, 2, 3, 4], 5);
    expect(root.getAttribute("role")).toBe("img");
    expect(words).toBe("The front in small: 4 of 40 leaves are folded. You are at 11% of its width from the left.");
    expect(drawn([], 5, "rtl").words).toContain("You are at 89%");
  });

  it("pales nothing once all is folded", () => {
    expect(
      drawn(
        Array.from({ length: 40 }, (_, i) => i + 1),
        40,
      ).open,
    ).toEqual([]);
  });
});
