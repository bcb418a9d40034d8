import { describe, expect, it } from "vitest";
import { lastPageOf } from "../../../src/core/book/last-page.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { readPlates, writePlates } from "../../../src/core/book/plates.ts";

const TWO = [
  { afterPage: 192, leaves: 4 },
  { afterPage: 300, leaves: 2 },
];

describe("readPlates(text) and writePlates(plates, form)", () => {
  it.each([["192 × 4, 300 × 2"], ["192x4.300x2"], ["192:4; 300:2"], [" 192 * 4 ,300X2"], ["192 × 4, 300 × 2,"]])(
    "reads %j",
    (text) => {
      expect(readPlates(text)).toEqual(TWO);
    },
  );

  it.each([[""], [" "], [", "]])("reads no plates of %j", (text) => {
    expect(readPlates(text)).toEqual([]);
  });

  it.each([["four"], ["192"], ["192 ×"], ["192 × 4, four"], ["-1 × 4"], ["192 × 4 × 2"]])(
    "does not read %j",
    (text) => {
      expect(readPlates(text)).toBeUndefined();
    },
  );

  it("writes what it reads back", () => {
    expect(writePlates(TWO, "plain")).toBe("192 × 4, 300 × 2");
    expect(writePlates(TWO, "address")).toBe("192x4.300x2");
    expect(writePlates([], "plain")).toBe("");
  });
});

describe("lastPageOf(book)", () => {
  it.each([
    // The domain's check value: 200 leaves from page 1 on, whose last page may be 399 or 400.
    [200, 1, [], 400],
    [204, 5, [], 400],
    [204, 5, TWO, 388],
    [10, 8, TWO, -6],
  ])("of %d leaves with page 1 on leaf %d and plates %j is %d", (leaves, pageOneLeaf, plates, last) => {
    expect(lastPageOf({ leaves, pageOneLeaf: leafNumber(pageOneLeaf), plates })).toBe(last);
  });
});
