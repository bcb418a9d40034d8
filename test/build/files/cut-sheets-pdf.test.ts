import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { cutSheetsPdf } from "../../../src/build/files/cut-sheets-pdf.ts";
import type { CutDrawing, Operation, ToolPath } from "../../../src/core/packing/operation.ts";
import { heightOf, readPdf, widthOf } from "../print/read-pdf.ts";

const square = (operation: Operation, left: number, top: number, side: number): ToolPath => ({
  operation,
  points: [
    [left, top],
    [left + side, top],
    [left + side, top + side],
    [left, top + side],
  ],
  closed: true,
});

const drawing = (width: number, height: number, ...paths: readonly ToolPath[]): CutDrawing => ({
  title: "",
  about: "",
  width,
  height,
  paths,
});

async function read(...drawings: Parameters<typeof cutSheetsPdf>[0]) {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-cut-pdf-"));
  try {
    writeFileSync(join(folder, "sheets.pdf"), await cutSheetsPdf(drawings));
    return (await readPdf(join(folder, "sheets.pdf"))).pages;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

// Read back with pdfjs-dist; mm from the page's upper left corner.
describe("cutSheetsPdf(drawings)", () => {
  it("has a page of each sheet's own size, and lines at true scale where they lie", async () => {
    const pages = await read(
      { name: "", drawing: drawing(210, 297, square("through-cut", 20, 30, 100)) },
      { name: "", drawing: drawing(304.8, 304.8, square("measure-check", 8, 8, 50)) },
    );
    expect(pages.map(({ width, height }) => [width, height].map((side) => Math.round(side * 10) / 10))).toEqual([
      [210, 297],
      [304.8, 304.8],
    ]);
    const [cut, check] = pages.map(({ outlines }) => outlines);
    expect([cut!.length, check!.length]).toEqual([1, 1]);
    const { box, closed, paint, lineWidth } = cut![0]!;
    expect([closed, paint]).toEqual([true, "stroke"]);
    expect(lineWidth).toBeCloseTo(0.25, 3);
    for (const [value, expected] of [
      [box.left, 20],
      [box.top, 30],
      [widthOf(box), 100],
      [heightOf(box), 100],
      [widthOf(check![0]!.box), 50],
    ])
      expect(Math.abs(value! - expected!)).toBeLessThan(0.02);
  });

  it("draws the file's name in strokes in the free edge, and has no picture", async () => {
    const [page] = await read({ name: "card-a4-1", drawing: drawing(210, 297) });
    expect(page!.images).toBe(0);
    expect(page!.outlines.length).toBeGreaterThan(8);
    for (const { box } of page!.outlines) {
      expect(box.left).toBeGreaterThan(7.9);
      expect(box.top).toBeGreaterThan(2.4);
      expect(box.bottom).toBeLessThan(5.6);
    }
  });
});
