import { describe, expect, it } from "vitest";
import type { Level } from "../../../../src/core/kit/kit.ts";
import { gaugeSheets } from "../../../../src/output/drawing/sheets/gauge-sheet.ts";
import { extentOf } from "../../../core/geometry/plane.ts";
import { madeKit } from "../../../core/kit/made-kit.ts";
import { readDrawing } from "../read-drawing.ts";

/** What A4 and US Letter can both print across, mm. */
const WIDTH = 182;

const level = (name: string, depth: number, line: number): Level => ({ name, depth, line, background: false });

/** What is cut out of each sheet, from left to right: left edge, width and height, mm. */
function cutOut(
  lines: readonly number[],
  levels: readonly Level[],
): { left: number; width: number; height: number }[][] {
  const kit = madeKit({ gaugeLines: lines, levels, book: { leafHeight: 180 } });
  return gaugeSheets(kit).map((sheet) =>
    readDrawing(sheet)
      .paths.filter(({ dash, points }) => dash === "" && points.length >= 4)
      .map(({ points }) => extentOf([points]))
      .filter(({ height }) => height > 100)
      .map(({ left, width, height }) => ({ left, width, height }))
      .sort((a, b) => a.left - b.left),
  );
}

// By hand: the pricked gauge is 14 mm wider than its deepest line; a strip is as wide as its line is deep.
describe("gaugeSheets(kit)", () => {
  it("has a strip for each line in use, beside the gauge where there is room", () => {
    const sheets = cutOut([10, 18, 26], [level("rim", 10, 1), level("well", 26, 3)]);
    expect(sheets.map((sheet) => sheet.map(({ width }) => width))).toEqual([[40, 10, 26]]);
  });

  it("has one strip for levels at one line", () => {
    const levels = [level("rim", 10, 1), level("wall", 20, 2), level("door", 20, 2)];
    expect(cutOut([10, 20], levels)[0]!.map(({ width }) => width)).toEqual([34, 10, 20]);
  });

  it("goes on to further sheets where the first has no room", () => {
    const levels = [level("rim", 20, 1), level("wall", 60, 2), level("well", 70, 3), level("deep", 90, 4)];
    const sheets = cutOut([20, 60, 70, 90], levels);
    expect(sheets.map((sheet) => sheet.map(({ width }) => width))).toEqual([[104, 20], [60, 70], [90]]);
    for (const { left, width, height } of sheets.flat()) {
      expect(left + width).toBeLessThanOrEqual(WIDTH);
      expect(height).toBe(180);
    }
  });

  it("keeps what is cut out apart", () => {
    for (const sheet of cutOut([10, 18, 26], [level("rim", 10, 1), level("wall", 18, 2), level("well", 26, 3)]))
      for (const [i, { left, width }] of sheet.slice(0, -1).entries())
        expect(sheet[i + 1]!.left).toBeGreaterThan(left + width + 2);
  });

  it("names on each strip its level, line and distance", () => {
    const kit = madeKit({ gaugeLines: [10, 18, 26], levels: [level("rim", 10, 1), level("well", 26, 3)] });
    const words = readDrawing(gaugeSheets(kit)[0]!).texts.map((text) => text.words.replaceAll("\u00a0", " "));
    expect(words).toContain("1 rim: line 1, 10 mm");
    expect(words).toContain("2 well: line 3, 26 mm");
  });
});
