import { describe, expect, it } from "vitest";
import { type Book, caliper, PLAUSIBLE_CALIPER } from "../../../src/core/book/book.ts";
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

  // Source: a paper merchant's table of calipers (inches) and pages to the inch (straubpublishing.com, paperweight), and one
  // of a printer on demand, per page; a leaf is two pages, so an inch of leaves is half as many.
  it.each([
    [0.0032, 625],
    [0.0036, 555],
    [0.0038, 526],
    [0.0048, 417],
    [0.006, 333],
    [0.0061, 327],
    [2 * 0.002252, 444],
    [2 * 0.0025, 400],
    [2 * 0.002347, 426],
  ])("is %d in where an inch holds %d pages, to a page", (thickness, pages) => {
    expect(caliper(book(25.4, (pages + 1) / 2))).toBeLessThanOrEqual(thickness * 25.4);
    expect(caliper(book(25.4, (pages - 1) / 2))).toBeGreaterThanOrEqual(thickness * 25.4);
  });

  // Source: Wausau Paper, "Shoptalk: Paper": 1000 over the caliper in mils is sheets to the inch; twice that, pages.
  it("is 4 mils where an inch holds 250 sheets or 500 pages", () => {
    expect(caliper(book(25.4, 250))).toBeCloseTo(0.004 * 25.4, 12);
  });

  it("is plausible for all of these, and not where pages are taken for leaves of thin paper, or leaves for pages of thick", () => {
    const [least, most] = PLAUSIBLE_CALIPER;
    for (const inches of [0.0032, 0.0061, 0.0045, 0.0039]) {
      expect(inches * 25.4).toBeGreaterThan(least);
      expect(inches * 25.4).toBeLessThan(most);
    }
    expect((0.003 * 25.4) / 2).toBeLessThan(least);
    expect(0.0061 * 25.4 * 2).toBeGreaterThan(most);
  });
});
