import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { numberLeaves } from "../../../src/core/book/numbering.ts";
import { type Counted, pageChecks, pageFound } from "../../../src/core/book/page-check.ts";
import { fc } from "../../seed.ts";

function counted(lastPage: number, pageOneLeaf = 1, plates: Counted["plates"] = []): Counted {
  return { lastPage, pageOneLeaf: leafNumber(pageOneLeaf), plates };
}

describe("pageChecks(counted)", () => {
  // By hand: where page 1 is on leaf a, the front of leaf L is page 2(L − a) + 1.
  it.each([
    ["page 1 on the first leaf", counted(390), [20, 39], [170, 339]],
    ["two leaves before page 1", counted(390, 3), [20, 35], [172, 339]],
    ["much before page 1", counted(390, 30), [35, 11], [196, 333]],
    ["plates before the second leaf", counted(390, 1, [{ afterPage: 192, leaves: 4 }]), [20, 39], [174, 339]],
  ])("compares leaf 20 and one near the end: %s", (_, book, near, far) => {
    expect(pageChecks(book)).toEqual([
      { leaf: near[0], page: near[1] },
      { leaf: far[0], page: far[1] },
    ]);
  });

  it("compares one leaf of a thin book, and none of one without pages", () => {
    expect(pageChecks(counted(40))).toEqual([{ leaf: 11, page: 21 }]);
    expect(pageChecks(counted(0))).toEqual([]);
  });

  it("steps over a leaf without a number", () => {
    expect(pageChecks(counted(390, 1, [{ afterPage: 38, leaves: 3 }]))[0]).toEqual({ leaf: 23, page: 39 });
  });
});

describe("pageFound(counted, check, page, isNear)", () => {
  const check = { leaf: leafNumber(20), page: 35 };

  it.each([
    [33, { kind: "page-one", pageOneLeaf: 4 }],
    [39, { kind: "page-one", pageOneLeaf: 1 }],
    [41, { kind: "impossible" }],
    [391, { kind: "impossible" }],
    [34, { kind: "back" }],
  ])("knows from page %s on leaf 20 where page 1 is", (page, found) => {
    expect(pageFound(counted(390, 3), check, page, true)).toEqual(found);
  });

  it.each([
    [331, { kind: "unnumbered", leaves: 4 }],
    [341, { kind: "impossible" }],
    [332, { kind: "back" }],
  ])("knows from page %s on leaf 172 how many leaves have no number", (page, found) => {
    expect(pageFound(counted(390, 3), { leaf: leafNumber(172), page: 339 }, page, false)).toEqual(found);
  });

  it("finds the leaf with page 1 of any book that was counted wrongly, and how many plates were passed over", () => {
    const pages = fc.integer({ min: 120, max: 900 });
    const leaf = fc.integer({ min: 1, max: 15 });
    fc.assert(
      fc.property(pages, leaf, leaf, fc.nat(9), (lastPage, said, real, plates) => {
        const wrong = counted(lastPage, said);
        const book = {
          ...counted(lastPage, real, plates === 0 ? [] : [{ afterPage: 60, leaves: plates }]),
          leaves: 2000,
        };
        const seen = (at: number): number | undefined => {
          const name = numberLeaves(book).nameOf(leafNumber(at));
          return name.kind === "numbered" ? name.recto : undefined;
        };
        const [near] = pageChecks(wrong);
        const page = seen(near!.leaf)!;
        expect(pageFound(wrong, near!, page, true)).toEqual({ kind: "page-one", pageOneLeaf: real });
        const right = { ...wrong, pageOneLeaf: leafNumber(real) };
        const far = pageChecks(right)[1];
        if (!far || far.page < 62 + 2 * plates) return;
        expect(pageFound(right, far, seen(far.leaf)!, false)).toEqual({ kind: "unnumbered", leaves: plates });
      }),
    );
  });
});
