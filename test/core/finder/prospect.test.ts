import { describe, expect, it } from "vitest";
import { outlinedKit, outlineOf } from "../../../src/core/finder/outline.ts";
import { farnessOf, prospectOf } from "../../../src/core/finder/prospect.ts";
import { judge } from "../../../src/core/finder/verdict.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { layOutPicture } from "../../../src/core/pattern/face.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { FIXTURE_KITS, fixtureKit } from "../../input/kit/kit-folders.ts";
import { fc } from "../../seed.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";

/** Kits of each way to state a shape, with and without a light. */
const MADE: readonly Kit[] = [
  madeKit(),
  litKit(),
  madeKit({ fit: { shape: { solve: "opening", pictureLeaves: 30, height: 40 } } }),
  madeKit({ fit: { shape: { solve: "height", pictureLeaves: "fill", opening: 1 }, head: undefined } }),
  madeKit({ fit: { shape: { solve: "pictureLeaves", height: 40, opening: 1 }, foldStyle: "stepped" } }),
];

const part = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined });

/** Books from leaflets to folios, with any of their figures left open, also such as contradict each other. */
const BOOKS: fc.Arbitrary<Refit> = fc
  .record({
    leafHeight: part(fc.integer({ min: 40, max: 400 })),
    leafWidth: part(fc.integer({ min: 30, max: 250 })),
    blockThickness: part(fc.integer({ min: 1, max: 60 })),
    leaves: part(fc.oneof(fc.integer({ min: 4, max: 40 }), fc.integer({ min: 4, max: 400 }))),
    lastPage: part(fc.integer({ min: 2, max: 500 })),
  })
  .map((book) => Object.fromEntries(Object.entries(book).filter(([, value]) => value !== undefined)));

/** What the outline says must be what asking the whole kit would have said, or leave it open. */
function expectSame(kit: Kit, book: Refit): string {
  const prospect = prospectOf(outlineOf(kit), book);
  const verdict = judge(kit, book);
  if (prospect.kind === "no") expect(verdict).toEqual({ kind: "no", failure: prospect.failure });
  if (prospect.kind === "change") expect(["change", "no"]).toContain(verdict.kind);
  return prospect.kind;
}

describe("prospectOf(outline, book)", () => {
  it("never rules out a kit that can be made, and says the same as asking all of it", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        fc.constantFrom(...MADE),
        BOOKS,
        fc.constantFrom("mm" as const, "in" as const),
        (kit, book, units) => {
          seen.add(expectSame({ ...kit, units }, book));
        },
      ),
      { numRuns: 400 },
    );
    expect([...seen].toSorted()).toEqual(["change", "lies", "no"]);
  });

  it("says the same of the fixtures", () => {
    const kit = fixtureKit("little-gull");
    fc.assert(
      fc.property(BOOKS, (book) => {
        expectSame(kit, book);
      }),
      { numRuns: 25 },
    );
  });

  it("rules out a leaf on which no flap lies, however shallow", () => {
    expect(prospectOf(outlineOf(madeKit()), { leafWidth: 20 })).toMatchObject({ kind: "no" });
  });
});

describe("outlineOf(kit)", () => {
  it.each(FIXTURE_KITS)("lays %s out as the whole kit, in a kilobyte", (slug) => {
    const kit = fixtureKit(slug);
    const outline = JSON.parse(JSON.stringify(outlineOf(kit)));
    expect(layOutPicture(outlinedKit(outline))).toEqual(layOutPicture(kit));
    expect(JSON.stringify(outline).length).toBeLessThan(1000);
  });

  it("stays below a kilobyte with as many levels as a kit may have", () => {
    const levels = Array.from({ length: 9 }, (_, i) => ({
      name: `a level of the sea ${i}`,
      depth: 10.25 + 5 * i,
      line: i + 1,
      background: i === 8,
    }));
    const plates = [1, 2, 3].map((one) => ({ afterPage: 96 * one, leaves: 4 }));
    expect(JSON.stringify(outlineOf(madeKit({ levels, book: { plates } }))).length).toBeLessThan(1024);
  });
});

describe("farnessOf(outline, book)", () => {
  // Natural logarithms of the greatest ratio.
  it.each<[string, Refit, number]>([
    ["the same book", {}, 0],
    ["twice the height", { leafHeight: 240 }, Math.log(2)],
    ["half the leaves", { leafHeight: 130, leaves: 20 }, Math.log(2)],
  ])("measures %s", (_, book, far) => {
    expect(farnessOf(outlineOf(madeKit()), book)).toBeCloseTo(far, 12);
  });
});
