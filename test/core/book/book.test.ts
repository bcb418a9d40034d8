import { describe, expect, it } from "vitest";
import { type Book, caliper, caliperDoubt } from "../../../src/core/book/book.ts";

const book = (blockThickness: number, leaves: number): Book => ({
  leafHeight: 210,
  leafWidth: 140,
  blockThickness,
  leaves,
  pageOneLeaf: 1,
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

// Common practice, no source: a caliper outside 0.04 to 0.30 mm is almost always a mix-up of leaves and pages.
describe("caliperDoubt(book)", () => {
  it.each([
    [20, 200],
    [8, 200],
    [60, 200],
    [4, 100],
    [30, 100],
  ])("has none about %d mm in %d leaves", (thickness, leaves) => {
    expect(caliperDoubt(book(thickness, leaves))).toBeUndefined();
  });

  it("suspects pages counted as leaves where one leaf would be too thin", () => {
    // A block of 7.5 mm with 188 pages, written as 188 leaves: 0.0399 mm each.
    const doubt = caliperDoubt(book(7.5, 188))!;
    expect(doubt).toContain("0.040 mm");
    expect(doubt).toContain("188 pages are 94 leaves");
    expect(caliperDoubt(book(7.5, 94))).toBeUndefined();
  });

  it("counts an odd number of pages up to whole leaves", () => {
    // A last leaf with one printed page is a leaf (AACR2 (2005) glossary, Leaf: either or both pages may be blank; seen
    // through a second party).
    expect(caliperDoubt(book(7.5, 399))).toContain("399 pages are 200 leaves");
  });

  it("suspects missed leaves or measured boards where one leaf would be too thick", () => {
    const doubt = caliperDoubt(book(30.1, 100))!;
    expect(doubt).toContain("0.301 mm");
    expect(doubt).toContain("without the boards");
    expect(doubt).not.toContain("pages may have been counted");
  });
});
