import { describe, expect, it } from "vitest";
import type { SheetSize } from "../../../src/core/kit/kit.ts";
import { layOut, layOutOnSizes } from "../../../src/core/packing/lay-out.ts";
import { sheetPaths } from "../../../src/core/packing/sheet-paths.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { partsOf } from "../../../src/core/window/window.ts";
import { fc } from "../../seed.ts";
import { madePart, madeWindow } from "../plan/made-pattern.ts";
import { areaSheets, shelfSheets } from "./by-shelves.ts";

const A4 = { name: "A4", width: 210, height: 297 };
const CRAFT = { name: "12 × 12 in", width: 304.8, height: 304.8 };
/** Free edge of a sheet and free space between parts, mm, as the guide states them. */
const EDGE = 8;
const APART = 4;
/** The reference rectangle of a cut file, mm, as the guide states it. */
const REFERENCE = { width: 50, height: 20 };

const FIELD = { width: A4.width - 2 * EDGE, height: A4.height - 2 * EDGE };

const card = (id: string, width: number, height: number, changes: Partial<Part> = {}): Part =>
  madePart("motif", "card", width, height, { id, ...changes });

/** Corner and size of the box round some points. */
function spread(points: readonly (readonly [number, number])[]) {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

const cutsOn = (sheet: ReturnType<typeof layOut>["sheets"][number], size: SheetSize = A4) =>
  sheetPaths(sheet, size)
    .filter(({ operation }) => operation === "through-cut")
    .map(({ points }) => spread(points));

const side = fc.integer({ min: 12, max: 190 });
const sets = fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 40 });
const partsOfSizes = (sizes: readonly (readonly [number, number])[]): Part[] =>
  sizes.map(([width, height], i) => card(`part ${i}`, width, height));

describe("sheets of layOut(parts, sheet)", () => {
  it("are never fewer than the parts' area needs, nor more than a packing on shelves", () => {
    fc.assert(
      fc.property(sets, (sizes) => {
        const { sheets, tooLarge } = layOut(partsOfSizes(sizes), A4);
        expect(tooLarge).toEqual([]);
        const areas = sizes.map(([width, height]) => width * height);
        expect(sheets.length).toBeGreaterThanOrEqual(areaSheets(areas, A4));
        const pieces = sizes.map(([width, height]) => ({ width, height }));
        expect(sheets.length).toBeLessThanOrEqual(shelfSheets(pieces, FIELD, APART));
      }),
      { numRuns: 100 },
    );
  });

  it("hold card of one colour each, numbered through the material", () => {
    const red = { card: { name: "red", colour: "#a63a33" } };
    const parts = [
      card("a", 20, 20, red),
      madePart("glazing", "acetate", 50, 50),
      card("b", 20, 20),
      card("c", 20, 20, { card: { ...red.card } }),
    ];
    const { sheets } = layOut(parts, A4);
    expect(
      sheets.map((sheet) => [sheet.material, sheet.card?.name, sheet.number, sheet.parts.map(({ id }) => id)]),
    ).toEqual([
      ["card", "red", 1, ["a", "c"]],
      ["card", undefined, 2, ["b"]],
      ["acetate", undefined, 1, ["glazing"]],
    ]);
  });

  it("keep parts apart and inside the free edge", () => {
    fc.assert(
      fc.property(sets, (sizes) => {
        for (const { places } of layOut(partsOfSizes(sizes), A4).sheets) {
          for (const [i, a] of places.entries()) {
            expect(Math.min(a.x, a.y)).toBeGreaterThanOrEqual(EDGE - 1e-9);
            expect(a.x + a.width).toBeLessThanOrEqual(A4.width - EDGE + 1e-9);
            expect(a.y + a.height).toBeLessThanOrEqual(A4.height - EDGE + 1e-9);
            for (const b of places.slice(i + 1)) {
              const across = Math.max(b.x - (a.x + a.width), a.x - (b.x + b.width));
              const down = Math.max(b.y - (a.y + a.height), a.y - (b.y + b.height));
              expect(Math.max(across, down)).toBeGreaterThanOrEqual(APART - 1e-9);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("hold every part as often as it is cut, each material on sheets of its own, numbered from 1", () => {
    const parts = partsOf(madeWindow({ holder: madePart("holder", "card", 190, 280) }));
    const { sheets } = layOut(parts, A4);
    expect(sheets.map(({ material, number }) => `${material} ${number}`)).toEqual([
      "card 1",
      "card 2",
      "acetate 1",
      "paper 1",
    ]);
    for (const { material, parts: laid, places } of sheets) {
      expect(laid.every((part) => part.material === material)).toBe(true);
      expect(places.map(({ part }) => part)).toEqual(laid);
    }
    const wanted = parts.flatMap((part) => Array.from({ length: part.count }, () => part.id));
    expect(sheets.flatMap(({ parts: laid }) => laid.map(({ id }) => id)).toSorted()).toEqual(wanted.toSorted());
  });

  it("cut each part where it lies", () => {
    fc.assert(
      fc.property(sets, (sizes) => {
        for (const sheet of layOut(partsOfSizes(sizes), A4).sheets)
          expect(cutsOn(sheet)).toEqual(sheet.places.map(({ x, y, width, height }) => ({ x, y, width, height })));
      }),
      { numRuns: 30 },
    );
  });

  // The field is 194 × 281 mm.
  it.each([
    [194, 281, true],
    [281, 194, true],
    [194.1, 194.1, false],
    [281.1, 10, false],
    [10, 281.1, false],
  ])("take a part of %d × %d mm one way or the other: %s", (width, height, fits) => {
    const part = card("one", width, height);
    const { sheets, tooLarge } = layOut([part], A4);
    expect([sheets.length, tooLarge]).toEqual(fits ? [1, []] : [0, [part]]);
  });
});

describe("what is measured on a sheet of layOut(parts, sheet)", () => {
  const checksOn = (parts: readonly Part[], sheet = A4) =>
    layOut(parts, sheet).sheets.map((laid) =>
      sheetPaths(laid, sheet)
        .filter(({ operation }) => operation === "measure-check")
        .map(({ points }) => spread(points)),
    );

  // By hand: below a part of 249 mm, 8 mm from the upper edge, 4 mm apart, it ends at 281 of 297; 4 mm may be taken of the edge.
  it.each([
    [100, 112],
    [249, 261],
    [261, 273],
  ])("stands below a part of %d mm, at %d", (height, top) => {
    const [sheet] = layOut([card("one", 190, height)], A4).sheets;
    expect(checksOn([card("one", 190, height)])).toEqual([[{ x: EDGE, y: top, ...REFERENCE }]]);
    expect(sheetPaths(sheet!, A4)[0]!.operation).toBe("measure-check");
  });

  // By hand: beside a part of 130 mm on A4, from 8 + 130 + 4 to 192 of 210 lying; beside one of 150 mm, from 162 to 182 upright.
  it("stands beside a part where there is no room below", () => {
    expect(checksOn([card("one", 130, 281)])).toEqual([[{ x: 142, y: 8, width: 50, height: 20 }]]);
    expect(checksOn([card("one", 150, 281)])).toEqual([[{ x: 162, y: 8, width: 20, height: 50 }]]);
  });

  const framed = (hole: readonly (readonly [number, number])[]): Part => {
    const rim = card("rim", 194, 281).outlines[0]!;
    return card("rim", 194, 281, { outlines: [rim, hole] });
  };
  /** A hole of a part whose corner is at (7, 11), run against its rim. */
  const HOLE = [
    [27, 31],
    [27, 131],
    [127, 131],
    [127, 31],
  ] as const;

  // By hand: the hole lies from 28 to 128 across and down the sheet, so its middle is at 78; half of 50 and of 20 are taken off.
  it("stands in what falls out of a part that fills its sheet", () => {
    expect(checksOn([framed(HOLE)])).toEqual([[{ x: 53, y: 68, width: 50, height: 20 }]]);
  });

  // By hand: 8 mm of free edge, bars 4 mm wide in its middle.
  const inTheEdge = [
    { x: 8, y: 291, width: 50, height: 4 },
    { x: 204, y: 8, width: 4, height: 50 },
  ];

  it("are two bars in the free edge of a sheet that a part fills", () => {
    expect(checksOn([card("full", 190, 281)])).toEqual([inTheEdge]);
    expect(checksOn([card("full", 190, 261.1)])).toEqual([inTheEdge]);
  });

  it("leaves alone an island, and a hole round a tongue", () => {
    const tongue = [
      [27, 31],
      [27, 131],
      [127, 131],
      [127, 31],
      [120, 31],
      [120, 115],
      [34, 115],
      [34, 31],
    ] as const;
    expect(checksOn([framed(HOLE.toReversed())])).toEqual([inTheEdge]);
    expect(checksOn([framed(tongue)])).toEqual([inTheEdge]);
  });

  it("are shorter by whole centimetres on a small sheet", () => {
    const small = { name: "small", width: 50, height: 62 };
    expect(checksOn([card("full", 34, 46)], small)).toEqual([
      [
        { x: 8, y: 56, width: 30, height: 4 },
        { x: 44, y: 8, width: 4, height: 40 },
      ],
    ]);
  });

  it("is on every sheet, on it and away from every part", () => {
    fc.assert(
      fc.property(sets, (sizes) => {
        for (const laid of layOut(partsOfSizes(sizes), A4).sheets) {
          const { places } = laid;
          const checks = sheetPaths(laid, A4).filter(({ operation }) => operation === "measure-check");
          expect(checks.length).toBeGreaterThan(0);
          for (const { x, y, width, height } of checks.map(({ points }) => spread(points))) {
            expect(Math.min(x, y, A4.width - x - width, A4.height - y - height)).toBeGreaterThanOrEqual(2);
            expect(Math.max(width, height)).toBe(50);
            for (const part of places) {
              const across = Math.max(part.x - (x + width), x - (part.x + part.width));
              const down = Math.max(part.y - (y + height), y - (part.y + part.height));
              expect(Math.max(across, down)).toBeGreaterThanOrEqual(2 - 1e-9);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("stands below the lowest of several parts", () => {
    const [sheet] = layOut([card("low", 90, 100), card("high", 90, 200)], A4).sheets;
    expect(sheetPaths(sheet!, A4)[0]!.points[0]![1]).toBe(EDGE + 200 + APART);
    const [stacked] = layOut([card("one", 190, 100), card("two", 190, 100)], A4).sheets;
    expect(sheetPaths(stacked!, A4)[0]!.points[0]![1]).toBe(EDGE + 100 + APART + 100 + APART);
  });
});

describe("layOutOnSizes(parts, sizes)", () => {
  const named = (layouts: ReturnType<typeof layOutOnSizes>) =>
    layouts.map(({ sheet, sheets, tooLarge }) => [
      sheet.name,
      sheets.flatMap(({ parts }) => parts.map(({ id }) => id)),
      tooLarge.map(({ id }) => id),
    ]);
  const small = card("small", 100, 100);
  const wide = card("wide", 250, 250);
  const huge = card("huge", 400, 400);

  it("lays a part that is too large for the first sheet on the next one", () => {
    expect(named(layOutOnSizes([small, wide], [A4, CRAFT]))).toEqual([
      ["A4", ["small"], []],
      ["12 × 12 in", ["wide"], []],
    ]);
  });

  it("leaves out sizes without a sheet", () => {
    expect(named(layOutOnSizes([wide], [A4, CRAFT]))).toEqual([["12 × 12 in", ["wide"], []]]);
    expect(named(layOutOnSizes([small], [A4, CRAFT]))).toEqual([["A4", ["small"], []]]);
    expect(named(layOutOnSizes([], [A4, CRAFT]))).toEqual([]);
  });

  it("names on the last size what none takes", () => {
    expect(named(layOutOnSizes([huge], [A4, CRAFT]))).toEqual([["12 × 12 in", [], ["huge"]]]);
    expect(named(layOutOnSizes([small, huge], [A4, CRAFT]))).toEqual([
      ["A4", ["small"], []],
      ["12 × 12 in", [], ["huge"]],
    ]);
    expect(named(layOutOnSizes([small, huge], [A4]))).toEqual([["A4", ["small"], ["huge"]]]);
  });
});
