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

  // Printers' table of calipers and pages to the inch (a paper merchant's page): an inch of book is half as many leaves as pages.
  it.each([
    [0.0032, 625],
    [0.0036, 555],
    [0.0038, 526],
    [0.0048, 417],
    [0.006, 333],
    [0.0061, 327],
  ])("is %d in where %d pages are an inch, to what the table rounds", (inches, pages) => {
    const one = caliper(book(25.4, pages / 2)) / 25.4;
    expect(Math.abs(2 / one - 2 / inches)).toBeLessThan(1);
  });

  // A print-on-demand house's inches to a page, as public repositories quote them: white, cream and colour paper.
  it.each([
    [0.002252, 0.1144],
    [0.0025, 0.127],
    [0.002347, 0.1192],
  ])("is of %d in to a page %d mm", (inches, mm) => {
    expect(caliper(book(300 * inches * 25.4, 150))).toBeCloseTo(mm, 4);
  });

  // A paper maker's rule: 4.0 mil are 250 sheets to the inch.
  it("is 4 mil where 250 leaves are an inch", () => {
    expect(caliper(book(25.4, 250))).toBeCloseTo(0.1016, 12);
  });
});

describe("PLAUSIBLE_CALIPER", () => {
  it("takes the papers of the tables, and not a book whose pages were counted as leaves, or leaves as pages", () => {
    const [least, most] = PLAUSIBLE_CALIPER;
    expect([least, most]).toEqual([0.04, 0.3]);
    for (const inches of [0.0032, 0.0061, 2 * 0.002252, 2 * 0.0025]) {
      expect(inches * 25.4).toBeGreaterThan(least);
      expect(inches * 25.4).toBeLessThan(most);
    }
    // Thin paper of 0.0029 in counted twice; thick paper of 0.0061 in counted by halves.
    expect((0.0029 * 25.4) / 2).toBeLessThan(least);
    expect(0.0061 * 25.4 * 2).toBeGreaterThan(most);
  });
});
