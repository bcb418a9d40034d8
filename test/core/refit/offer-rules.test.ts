import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { asCutKit } from "../../../src/core/kit/cut-kit.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitKit } from "../../../src/core/pattern/fit-kit.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { QUALITIES } from "../../../src/core/refit/quality.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { fc } from "../../seed.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";
import { patternOf } from "../pattern/computed.ts";

const FIXED = madeKit({ fit: { shape: { solve: "opening", pictureLeaves: 30, height: 40 } } });

const anyKit = fc.constantFrom<Kit>(
  madeKit(),
  madeKit({ fit: { borderLeaves: [1, 6] } }),
  madeKit({ fit: { head: undefined } }),
  FIXED,
  litKit(),
  litKit({ units: "in" }),
);

const anyBook: fc.Arbitrary<Refit> = fc
  .record({
    leafHeight: fc.integer({ min: 40, max: 200 }),
    leafWidth: fc.integer({ min: 30, max: 160 }),
    leaves: fc.integer({ min: 4, max: 400 }),
    caliper: fc.integer({ min: 5, max: 25 }),
    height: fc.integer({ min: 5, max: 220 }),
  })
  .map(({ caliper, ...book }) => ({
    ...book,
    blockThickness: Math.max(1, (book.leaves * caliper) / 100),
    pageOneLeaf: leafNumber(1),
    lastPage: 2 * book.leaves,
  }));

describe("whatever offersFor(kit, refit) offers", () => {
  it("fits, keeps paper at head and tail and leaves at the borders, and needs no book that nobody has", () => {
    let offered = 0;
    fc.assert(
      fc.property(anyKit, anyBook, (kit, book) => {
        const offers = fitKit(asCutKit(refitKit(kit, book))).fits ? [] : offersFor(kit, book);
        offered += offers.length;
        expect(offers.length).toBeLessThan(4);
        for (const offer of offers) {
          const changed = refitKit(kit, offer.refit);
          const { fit } = patternOf(changed);
          const tail = changed.book.leafHeight - fit.head - fit.height;
          expect(offer.margins).toEqual({ head: fit.head, tail });
          const light = offer.says.every(({ kind }) => kind.startsWith("light"));
          // All kits here keep more than 8 mm in their own books. A smaller light moves no picture.
          if (!light) expect(Math.min(fit.head, tail)).toBeGreaterThan(8 - 1e-6);
          for (const [i, border] of changed.fit.borderLeaves.entries())
            expect(border).toBeGreaterThanOrEqual(Math.min(2, kit.fit.borderLeaves[i]!));
          if (offer.otherBook) expect(changed.book.leaves).toBeLessThanOrEqual(450);
          if (offer.otherBook) expect(changed.book.blockThickness).toBeLessThanOrEqual(60 + 1e-6);
        }
        const ranks = offers.map(({ quality }) => QUALITIES.indexOf(quality));
        expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
      }),
      { numRuns: 150 },
    );
    expect(offered).toBeGreaterThan(75);
  });

  // By hand: 24 leaves less 4 at each end are 16, of 0.15 mm; they show 40 mm, and borders of 2 leave 20, no 30.
  it("is fewer picture leaves where a kit states more than a book has", () => {
    const book = { leaves: 24, blockThickness: 3.6, lastPage: 48 };
    const says = offersFor(FIXED, book).map((offer) => offer.says);
    expect(says).toContainEqual([{ kind: "picture-leaves", leaves: 16 }]);
    expect(says.flat().map(({ kind }) => kind)).not.toContain("borders");
  });

  // By hand: the same, on a leaf of 30 mm that keeps 8 at head and tail; a picture of 40 is too high for it.
  it("is fewer picture leaves and a lower picture where neither helps alone", () => {
    const book = { leafHeight: 30, leaves: 24, blockThickness: 3.6, lastPage: 48 };
    expect(offersFor(FIXED, book).map((offer) => offer.says)).toContainEqual([
      { kind: "picture-leaves", leaves: 16 },
      { kind: "height", height: 14 },
    ]);
  });
});
