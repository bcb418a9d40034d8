import { describe, expect, it } from "vitest";
import { classLayouts, type SeatPart, seatParts, seatsOfPart } from "../../../src/core/class/class-sheets.ts";
import { fitSeats, isCutting } from "../../../src/core/class/fit-seats.ts";
import { poolSupplies } from "../../../src/core/class/pool.ts";
import { tasksOf } from "../../../src/core/class/tasks.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { patternJson } from "../../../src/output/data/pattern-json.ts";
import { readFixtureClass } from "../../core/class/made-class.ts";
import { areaOf, extentOf } from "../../core/geometry/plane.ts";
import { areaSheets, shelfSheets } from "../../core/packing/by-shelves.ts";

const A4 = { name: "A4", width: 210, height: 297 };
/** Free edge of a sheet and free space between parts, mm, as the guide states them. */
const [EDGE, APART] = [8, 4];

const plan = { ...readFixtureClass(), stock: [] };
const { fitting } = fitSeats(plan.seats, plan.kits);
const parts = seatParts(fitting);
const [layout] = classLayouts(parts, [A4]);
const list = poolSupplies(plan, fitting, [layout!]);
const need = (id: string) => list.find((line) => line.id === id)!.need;
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

/** What each seat's published pattern says, read as anyone reads it. */
const published = fitting
  .filter(isCutting)
  .map(({ kit, pattern, findings, counts, effort }) =>
    JSON.parse(patternJson(kit, pattern, findings, suppliesOf(kit, pattern, counts), effort)),
  );

describe("the sheets of the fixtures’ class", () => {
  it.each(["card", "acetate", "paper"] as const)("are between the area bound and a shelf packing: %s", (material) => {
    const pieces = parts
      .filter((part) => part.material === material)
      .flatMap((part) => Array.from({ length: part.count }, () => part));
    const boxes = pieces.map(({ outlines, scores, marks }) =>
      extentOf([...outlines, ...scores, ...marks.map(({ line }) => line)]),
    );
    const sheets = layout!.sheets.filter((sheet) => sheet.material === material).length;
    expect(sheets).toBe(need(material));
    expect(sheets).toBeGreaterThanOrEqual(
      areaSheets(
        pieces.map((part) => areaOf(part.outlines)),
        A4,
      ),
    );
    const field = { width: A4.width - 2 * EDGE, height: A4.height - 2 * EDGE };
    expect(sheets).toBeLessThanOrEqual(shelfSheets(boxes, field, APART));
  });

  it("hold every part of every seat, each piece once", () => {
    const named = ({ seat, id }: SeatPart) => `${seat} ${id}`;
    const laid = layout!.sheets.flatMap((sheet) => sheet.parts.map(named));
    const wanted = parts.flatMap((part) => Array.from({ length: part.count }, () => named(part)));
    expect(laid.toSorted()).toEqual(wanted.toSorted());
    expect(new Set(parts.flatMap(seatsOfPart))).toEqual(new Set([1, 2, 3, 4, 5, 7, 8]));
  });

  it("are fewer than the seats' own sheets together", () => {
    const alone = fitting.map((fit) => classLayouts(seatParts([fit]), [A4])[0]!.sheets.length);
    expect(layout!.sheets.length).toBeLessThan(sum(alone));
  });
});

describe("the list of the fixtures’ class", () => {
  // Arithmetic on the published patterns: a blade for every 250 cuts begun, one more for a window; two dots for a button, three for a flat motif (common practice).
  it("adds up what each seat's published pattern needs", () => {
    const cuts = (pattern: (typeof published)[number]): number =>
      sum(pattern.leaves.map((leaf: { cuts: unknown[] }) => leaf.cuts.length)) + (pattern.light?.notches.length ?? 0);
    expect(need("blades")).toBe(sum(published.map((one) => Math.ceil(cuts(one) / 250) + (one.insert ? 1 : 0))));
    const tacks = (pattern: (typeof published)[number]): number =>
      pattern.leaves
        .flatMap((leaf: { tacks: { from: number; to: number }[] }) => leaf.tacks)
        .filter((tack: { from: number; to: number }) => tack.to - tack.from >= pattern.fit.leastTab).length;
    const flat = (pattern: (typeof published)[number]): number =>
      pattern.insert.parts.filter((part: { spacers?: number }) => part.spacers === 0).length;
    expect(need("glueDots")).toBe(sum(published.map((one) => tacks(one) + (one.insert ? 2 + 3 * flat(one) : 0))));
    expect(need("book")).toBe(7);
    expect(need("light")).toBe(published.filter((one) => one.light).length);
  });

  it("rounds tape and string up once, over all seats", () => {
    const windows = published.flatMap((one) => (one.insert ? [one.insert] : []));
    const bought = (mm: number) => Math.ceil((mm * (1 + plan.waste)) / 100) / 10;
    expect(need("tape")).toBe(bought(sum(windows.map(({ frameLength }) => 2 * frameLength))));
    expect(need("string")).toBe(bought(sum(windows.map(({ stringLength }) => stringLength))));
  });

  it("takes each seat the time of its published pattern at its pace, piece by piece", () => {
    for (const [i, fit] of fitting.entries()) {
      const minutes = sum(tasksOf({ ready: [], fittingShare: 0.5 }, fit).map((task) => task.minutes));
      expect(Math.abs(minutes / fit.seat.pace - published[i].time.minutes)).toBeLessThan(0.5);
    }
  });
});
