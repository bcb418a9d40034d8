import { describe, expect, it } from "vitest";
import type { Book } from "../../../src/core/book/book.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { bookPageOf, leavesNeeded, numberLeaves, patternPageOf } from "../../../src/core/book/numbering.ts";
import { leafToken } from "../../../src/output/data/leaf-token.ts";
import { fc } from "../../seed.ts";

const book = (parts: Partial<Book>): Book => ({
  leafHeight: 210,
  leafWidth: 140,
  blockThickness: 20,
  leaves: 200,
  pageOneLeaf: leafNumber(1),
  lastPage: 400,
  plates: [],
  direction: "ltr",
  square: 3,
  boardThickness: 2.5,
  ...parts,
});

const pagesOf = (parts: Partial<Book>): (number | null)[] => {
  const whole = book(parts);
  const { nameOf } = numberLeaves(whole);
  return Array.from({ length: whole.leaves }, (_, i) => bookPageOf(nameOf(leafNumber(i + 1))));
};

const namesOf = (parts: Partial<Book>): string[] => {
  const whole = book(parts);
  const { nameOf } = numberLeaves(whole);
  return Array.from({ length: whole.leaves }, (_, i) => {
    const name = nameOf(leafNumber(i + 1));
    return String(bookPageOf(name) ?? leafToken(name));
  });
};

// AACR2 (2005) glossary, Leaf (seen through a second party): each leaf is two pages, either or both of which may be blank.
// Getty AAT, folios (leaves), through a mirror: the recto is the front. So leaf n carries pages 2n − 1 and 2n.
describe("numberLeaves(book)", () => {
  it("gives each leaf its recto and verso", () => {
    const { nameOf } = numberLeaves(book({}));
    expect(nameOf(leafNumber(1))).toEqual({ kind: "numbered", recto: 1, verso: 2 });
    expect(nameOf(leafNumber(127))).toEqual({ kind: "numbered", recto: 253, verso: 254 });
    expect(nameOf(leafNumber(200))).toEqual({ kind: "numbered", recto: 399, verso: 400 });
  });

  it("has no verso where the last page is odd", () => {
    const { nameOf, leafOf } = numberLeaves(book({ lastPage: 399 }));
    expect(nameOf(leafNumber(200))).toEqual({ kind: "numbered", recto: 399, verso: null });
    expect(leavesNeeded(book({ lastPage: 399 }))).toBe(200);
    expect(leafOf(400)).toBeUndefined();
  });

  it("names unnumbered leaves at the front and at the end", () => {
    expect(namesOf({ leaves: 8, pageOneLeaf: leafNumber(3), lastPage: 7 })).toEqual([
      "front leaf 1 of 2",
      "front leaf 2 of 2",
      "1",
      "3",
      "5",
      "7",
      "end leaf 1 of 2",
      "end leaf 2 of 2",
    ]);
  });

  it("counts plates after a verso, and later leaves that many less", () => {
    const plates = [{ afterPage: 4, leaves: 2 }];
    expect(namesOf({ leaves: 10, pageOneLeaf: leafNumber(3), lastPage: 9, plates })).toEqual([
      "front leaf 1 of 2",
      "front leaf 2 of 2",
      "1",
      "3",
      "plate 1 of 2 after p. 4",
      "plate 2 of 2 after p. 4",
      "5",
      "7",
      "9",
      "end leaf 1 of 1",
    ]);
  });

  it("counts plates after a recto behind that leaf: a leaf cannot be parted", () => {
    expect(pagesOf({ leaves: 6, lastPage: 9, plates: [{ afterPage: 3, leaves: 1 }] })).toEqual([1, 3, null, 5, 7, 9]);
  });

  it("keeps plates in the order of their pages, however they are listed", () => {
    const plates = [
      { afterPage: 6, leaves: 1 },
      { afterPage: 2, leaves: 2 },
    ];
    expect(namesOf({ leaves: 8, lastPage: 10, plates })).toEqual([
      "1",
      "plate 1 of 2 after p. 2",
      "plate 2 of 2 after p. 2",
      "3",
      "5",
      "plate 1 of 1 after p. 6",
      "7",
      "9",
    ]);
  });

  it("keeps plates after both pages of one leaf in the order of those pages", () => {
    const plates = [
      { afterPage: 4, leaves: 1 },
      { afterPage: 3, leaves: 1 },
    ];
    expect(namesOf({ leaves: 5, lastPage: 6, plates })).toEqual([
      "1",
      "3",
      "plate 1 of 1 after p. 3",
      "plate 1 of 1 after p. 4",
      "5",
    ]);
  });

  it("counts plates after the last page, and both where two follow one leaf", () => {
    const plates = [
      { afterPage: 3, leaves: 1 },
      { afterPage: 4, leaves: 2 },
    ];
    expect(pagesOf({ leaves: 6, lastPage: 4, plates })).toEqual([1, 3, null, null, null, null]);
    expect(leavesNeeded(book({ leaves: 6, lastPage: 4, plates }))).toBe(5);
  });

  it("refuses leaves that are not in the book", () => {
    const { nameOf } = numberLeaves(book({ leaves: 10, lastPage: 18 }));
    for (const leaf of [0, 11, -1, 1.5]) expect(() => nameOf(leafNumber(leaf))).toThrow(RangeError);
  });

  it("says how many leaves the figures need when the book has fewer", () => {
    expect(leavesNeeded(book({ leaves: 204, pageOneLeaf: leafNumber(5), lastPage: 499 }))).toBe(254);
    expect(() => numberLeaves(book({ leaves: 10, lastPage: 499 })).nameOf(leafNumber(11))).toThrow("book of 10 leaves");
  });

  it("maps both ways: every leaf has a name, every page a leaf, and they agree", () => {
    const books = fc
      .record({
        pageOneLeaf: fc.integer({ min: 1, max: 9 }).map(leafNumber),
        lastPage: fc.integer({ min: 1, max: 300 }),
        end: fc.integer({ min: 0, max: 5 }),
        plates: fc.array(
          fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), leaves: fc.integer({ min: 1, max: 6 }) }),
          { maxLength: 4 },
        ),
      })
      .map(({ pageOneLeaf, lastPage, end, plates }) => ({
        pageOneLeaf,
        lastPage,
        plates: plates.map(({ at, leaves }) => ({ afterPage: 1 + Math.floor(at * (lastPage - 1)), leaves })),
        leaves: pageOneLeaf - 1 + Math.ceil(lastPage / 2) + end + plates.reduce((sum, plate) => sum + plate.leaves, 0),
        end,
      }));
    fc.assert(
      fc.property(books, ({ end, ...parts }) => {
        const whole = book(parts);
        const { nameOf, leafOf } = numberLeaves(whole);
        expect(leavesNeeded(whole)).toBe(whole.leaves - end);
        const names = Array.from({ length: whole.leaves }, (_, i) => nameOf(leafNumber(i + 1)));
        const count = (kind: string) => names.filter((name) => name.kind === kind).length;
        expect(count("front")).toBe(whole.pageOneLeaf - 1);
        expect(count("numbered")).toBe(Math.ceil(whole.lastPage / 2));
        expect(count("end")).toBe(end);
        for (let page = 1; page <= whole.lastPage; page += 1) {
          const name = nameOf(leafOf(page)!);
          expect(name.kind === "numbered" && (page % 2 === 1 ? name.recto : name.verso)).toBe(page);
          const before = whole.plates.filter((plate) => plate.afterPage <= page - 1 + (page % 2) - 1);
          const shift = before.reduce((sum, plate) => sum + plate.leaves, 0);
          expect(leafOf(page)).toBe(whole.pageOneLeaf - 1 + Math.ceil(page / 2) + shift);
        }
        expect(leafOf(0)).toBeUndefined();
        expect(leafOf(whole.lastPage + 1)).toBeUndefined();
      }),
      { numRuns: 60 },
    );
  });
});

// Common practice, no source.
describe("pattern pages and book pages", () => {
  it("a last page 399 and 10 + 10 border leaves leave 180 picture leaves, pattern pages 1 to 359", () => {
    const needed = leavesNeeded(book({ lastPage: 399 }));
    expect(needed).toBe(200);
    const pictureLeaves = needed - 10 - 10;
    expect(pictureLeaves).toBe(180);
    expect([patternPageOf(1), patternPageOf(2), patternPageOf(pictureLeaves)]).toEqual([1, 3, 359]);
  });

  it("pattern page 1 on book page 13 puts pattern page 19 on book page 31", () => {
    const { leafOf, nameOf } = numberLeaves(book({}));
    const first = leafOf(13)!;
    const nineteenth = (19 + 1) / 2;
    expect(patternPageOf(nineteenth)).toBe(19);
    expect(bookPageOf(nameOf(leafNumber(first + nineteenth - 1)))).toBe(31);
  });

  // Folger, Physical description in book cataloging: "[4], CXXII leaves" are 126 leaves.
  it("unnumbered front leaves come on top: four of them and 244 pages are 126 leaves", () => {
    expect(leavesNeeded(book({ pageOneLeaf: leafNumber(5), lastPage: 244 }))).toBe(126);
  });
});
