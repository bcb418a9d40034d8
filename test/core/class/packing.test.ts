import { describe, expect, it } from "vitest";
import { classLayouts, type SeatPart, seatParts } from "../../../src/core/class/class-sheets.ts";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import { layOut, layOutOnSizes } from "../../../src/core/packing/lay-out.ts";
import { extentOf } from "../../../src/core/packing/pack.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { fc } from "../../seed.ts";
import { areaOf } from "../geometry/plane.ts";
import { readFixtureClass } from "./made-class.ts";
import { areaSheets, shelfSheets } from "./shelves.ts";

const A4 = { name: "A4", width: 210, height: 297 };
const LARGE = { name: "12 × 12 in", width: 304.8, height: 304.8 };
/** Free edge of a sheet and free space between parts, mm, as the README states them. */
const EDGE = 8;
const APART = 4;

const boxOf = (part: Part) => {
  const box = extentOf(part);
  return { width: box.right - box.left, height: box.bottom - box.top };
};

/** Corner and size of the box round some points. */
function spread(points: readonly (readonly [number, number])[]) {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

const field = (sheet: { width: number; height: number }) => ({
  width: sheet.width - 2 * EDGE,
  height: sheet.height - 2 * EDGE,
});

function rectangle(id: string, width: number, height: number): Part {
  const outline: [number, number][] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  return {
    id,
    kind: "motif",
    material: "card",
    count: 1,
    frame: "own",
    outlines: [outline],
    scores: [],
    marks: [],
  };
}

describe("the sheets of the fixtures’ class", () => {
  const plan = readFixtureClass();
  const { fitting } = fitSeats(plan.seats, plan.kits);
  const parts = seatParts(fitting);
  const layouts = classLayouts(parts, [A4]);

  it.each(["card", "acetate", "paper"] as const)("are between the area bound and a shelf packing: %s", (material) => {
    const own = parts.filter((part) => part.material === material);
    const pieces = own.flatMap((part) => Array.from({ length: part.count }, () => boxOf(part)));
    const areas = own.flatMap((part) => Array.from({ length: part.count }, () => areaOf(part.outlines)));
    const sheets = layouts[0]!.sheets.filter((sheet) => sheet.material === material).length;
    expect(sheets).toBeGreaterThanOrEqual(areaSheets(areas, A4));
    expect(sheets).toBeLessThanOrEqual(shelfSheets(pieces, field(A4), APART));
  });

  it("hold every part of every seat, each piece once", () => {
    const named = ({ seat, id }: SeatPart) => `${seat} ${id}`;
    const laid = layouts.flatMap((layout) => layout.sheets.flatMap((sheet) => sheet.parts.map(named)));
    const wanted = parts.flatMap((part) => Array.from({ length: part.count }, () => named(part)));
    expect(laid.toSorted()).toEqual(wanted.toSorted());
    expect(new Set(wanted).size).toBe(parts.length);
    expect(new Set(parts.map(({ seat }) => seat))).toEqual(new Set([1, 2, 3, 4, 5, 7, 8]));
  });

  it("are fewer than the seats' own sheets together", () => {
    const alone = fitting.map((fit) => layOut(seatParts([fit]), A4).sheets.length);
    expect(layouts[0]!.sheets.length).toBeLessThan(alone.reduce((a, b) => a + b, 0));
  });
});

describe("layOut(parts, sheet)", () => {
  const side = fc.integer({ min: 12, max: 190 });
  const set = fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 40 });

  it("never takes fewer sheets than the area bound nor more than a shelf packing", () => {
    fc.assert(
      fc.property(set, (sizes) => {
        const parts = sizes.map(([width, height], i) => rectangle(`part ${i}`, width, height));
        const { sheets, tooLarge } = layOut(parts, A4);
        expect(tooLarge).toEqual([]);
        expect(sheets.length).toBeGreaterThanOrEqual(
          areaSheets(
            sizes.map(([w, h]) => w * h),
            A4,
          ),
        );
        expect(sheets.length).toBeLessThanOrEqual(shelfSheets(parts.map(boxOf), field(A4), APART));
      }),
      { numRuns: 300 },
    );
  });

  it("keeps parts apart and inside the free edge", () => {
    fc.assert(
      fc.property(set, (sizes) => {
        const parts = sizes.map(([width, height], i) => rectangle(`part ${i}`, width, height));
        for (const { places } of layOut(parts, A4).sheets) {
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
});

describe("packOnShelves(pieces, sizeOf, field, apart)", () => {
  it("lays what the packing of free rectangles finds no room for", () => {
    const sizes = [
      [114, 162],
      [138, 134],
      [131, 114],
      [164, 29],
      [163, 131],
    ] as const;
    const parts = sizes.map(([width, height], i) => rectangle(`part ${i}`, width, height));
    const { sheets } = layOut(parts, A4);
    expect(sheets).toHaveLength(2);
    for (const { places, paths } of sheets) {
      const cut = paths.filter((path) => path.operation === "through-cut").map((path) => spread(path.points));
      expect(cut).toEqual(places.map(({ part: _, ...place }) => place));
    }
  });
});

describe("layOutOnSizes(parts, sizes)", () => {
  it("lays a part that is too large for the first sheet on the next one", () => {
    const layouts = layOutOnSizes([rectangle("small", 100, 100), rectangle("wide", 250, 250)], [A4, LARGE]);
    const idsOn = (sheets: (typeof layouts)[number]["sheets"]) =>
      sheets.flatMap((one) => one.parts.map(({ id }) => id));
    expect(layouts.map(({ sheet, sheets }) => [sheet.name, idsOn(sheets)])).toEqual([
      ["A4", ["small"]],
      ["12 × 12 in", ["wide"]],
    ]);
  });

  it("names what no sheet takes", () => {
    const huge = rectangle("huge", 400, 400);
    const [layout] = layOutOnSizes([huge], [A4, LARGE]);
    expect(layout!.tooLarge).toEqual([huge]);
  });
});
