import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Row } from "../../../src/output/views/row.ts";
import { type TableSetting, tablePages } from "../../../src/output/views/table-pages.ts";
import { fc } from "../../seed.ts";

function row(leaf: number, marks: number, folds: number, notched: boolean): Row {
  return {
    leaf: leafNumber(leaf),
    patternPage: String(2 * leaf - 1),
    bookPage: String(leaf),
    unnumbered: false,
    marks: Array.from({ length: marks }, (_, i) => ({ at: String(i), cut: "1" })),
    folds: Array.from({ length: folds }, (_, i) => i + 1),
    border: false,
    checkpoint: false,
    notch: notched ? { from: "60", to: "75", depth: "48" } : undefined,
  };
}

/** Room that a row takes: its padding, and lines for its marks (or the words that it has none), its notch and its folds. */
function heightNeeded({ marks, folds, notch }: Row, setting: TableSetting): number {
  const markLines = Math.max(1, Math.ceil(marks.length / setting.marksPerLine)) + (notch ? 1 : 0);
  return setting.padding + Math.max(markLines, Math.ceil(folds.length / setting.foldsPerLine)) * setting.line;
}

const anyRows = fc
  .array(fc.record({ marks: fc.nat(24), folds: fc.integer({ min: 1, max: 25 }), notched: fc.boolean() }), {
    maxLength: 200,
  })
  .map((list) => list.map(({ marks, folds, notched }, i) => row(i + 1, marks, folds, notched)));

/** A page always has room for the highest row that there can be: 25 lines of at most 9 mm and 4 mm of padding. */
const anySetting: fc.Arbitrary<TableSetting> = fc.record({
  height: fc.double({ min: 229, max: 400, noNaN: true }),
  line: fc.double({ min: 3, max: 9, noNaN: true }),
  padding: fc.double({ min: 0, max: 4, noNaN: true }),
  marksPerLine: fc.integer({ min: 1, max: 8 }),
  foldsPerLine: fc.integer({ min: 1, max: 12 }),
});

describe("tablePages", () => {
  it("has no pages for no rows", () => {
    expect(tablePages([], { height: 200, line: 5, padding: 2, marksPerLine: 4, foldsPerLine: 9 })).toEqual([]);
  });

  it("keeps every row once and in order", () => {
    fc.assert(
      fc.property(anyRows, anySetting, (rows, setting) => {
        const leaves = tablePages(rows, setting).flatMap((page) => page.rows.map(({ leaf }) => leaf));
        expect(leaves).toEqual(rows.map(({ leaf }) => leaf));
      }),
    );
  });

  it("makes no page higher than it may be, and turns only where the next row would not fit", () => {
    fc.assert(
      fc.property(anyRows, anySetting, (rows, setting) => {
        const pages = tablePages(rows, setting);
        const heights = pages.map((page) => page.rows.reduce((sum, one) => sum + heightNeeded(one, setting), 0));
        for (const height of heights) expect(height).toBeLessThanOrEqual(setting.height + 1e-9);
        for (const [i, page] of pages.slice(1).entries())
          expect(heights[i]! + heightNeeded(page.rows[0]!, setting)).toBeGreaterThan(setting.height - 1e-9);
        for (const page of pages) expect(page.rows.length).toBeGreaterThan(0);
      }),
    );
  });

  it("gives each row the height that its lines need", () => {
    fc.assert(
      fc.property(anyRows, anySetting, (rows, setting) => {
        const printed = tablePages(rows, setting).flatMap((page) => page.rows);
        for (const [i, one] of printed.entries()) expect(one.height).toBeCloseTo(heightNeeded(rows[i]!, setting), 9);
      }),
    );
  });

  it("sets marks and folds in lines no longer than allowed, none lost", () => {
    fc.assert(
      fc.property(anyRows, anySetting, (rows, setting) => {
        for (const [i, one] of tablePages(rows, setting)
          .flatMap((page) => page.rows)
          .entries()) {
          expect(one.markLines.flat()).toEqual(rows[i]!.marks);
          expect(one.foldLines.flat()).toEqual(rows[i]!.folds);
          for (const line of one.markLines) expect(line.length).toBeLessThanOrEqual(setting.marksPerLine);
          for (const line of one.foldLines) expect(line.length).toBeLessThanOrEqual(setting.foldsPerLine);
        }
      }),
    );
  });

  it("counts leaves and cuts: so far never falls, adds up page by page and ends at the total", () => {
    fc.assert(
      fc.property(anyRows, anySetting, (rows, setting) => {
        const pages = tablePages(rows, setting);
        let soFar = 0;
        for (const page of pages) {
          expect(page.leaves).toBe(page.rows.length);
          expect(page.cuts).toBe(page.rows.reduce((sum, { marks }) => sum + marks.length, 0));
          soFar += page.cuts;
          expect(page.cutsSoFar).toBe(soFar);
        }
        expect(soFar).toBe(rows.reduce((sum, { marks }) => sum + marks.length, 0));
      }),
    );
  });

  it("marks the last page and only that, and rules every fifth row of the whole table", () => {
    fc.assert(
      fc.property(anyRows, anySetting, (rows, setting) => {
        const pages = tablePages(rows, setting);
        expect(pages.map(({ last }) => last)).toEqual(pages.map((_, i) => i + 1 === pages.length));
        const ruled = pages.flatMap((page) => page.rows).filter((one) => one.ruled);
        expect(ruled.map(({ leaf }) => leaf)).toEqual(rows.map(({ leaf }) => leaf).filter((leaf) => leaf % 5 === 0));
      }),
    );
  });
});
