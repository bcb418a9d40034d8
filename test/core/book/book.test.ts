import { describe, expect, it } from "vitest";
import { type Book, caliper } from "../../../src/core/book/book.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";

const book = (blockThickness: number, leaves: number): Book => ({
  leafHeight: 210,
  leafWidth: 140,
  blockThickness,
  leaves,
  pageOneLeaf: leafNumber(1),
  lastPage: 2 * leaves,
  plates: [],
  direction: "ltr",
  square: 3,
  boardThickness: 2.5,
});

describe("caliper(book)", () => {
  // Printers' table of calipers, 50 lb offset: 128 pages are 64 leaves of 0.0039 in, together 0.2496 in.
  it("is the thickness of one leaf, not of one page", () => {
    expect(caliper(book(0.2496 * 25.4, 64))).toBeCloseTo(0.0039 * 25.4, 9);
  });
});
