import { beforeAll, describe, expect, it } from "vitest";
import type { Printed, PrintedPdf } from "./printed.ts";
import { heightOf, type Outline, widthOf } from "./read-pdf.ts";
import { ARROW, expectedRow, inchFraction, type TablePage, tableOf } from "./table.ts";

const HEAD = ["Done", "Leaf", "Pattern page", "Book page", `Marks${ARROW}cuts`, "Folds, head to tail"];

export function tableSuite(printed: () => Printed): void {
  describe("the printed table", () => {
    const tables: { pdf: PrintedPdf; pages: TablePage[] }[] = [];
    beforeAll(async () => {
      for (const pdf of printed().pdfs) tables.push({ pdf, pages: await tableOf(pdf) });
    });

    it("is in every packet and every large-print file", () => {
      for (const { pdf, pages } of tables) {
        expect(pages.length, pdf.name).toBeGreaterThan(1);
        if (pdf.kind === "table-large") expect(pages.length, pdf.name).toBe(pdf.pages.length);
      }
    });

    it("has every leaf of the pattern once, in order, with its pages, marks, cuts and folds", () => {
      for (const { pdf, pages } of tables) {
        const rows = pages.flatMap((page) => page.rows);
        // In stepped kits a cut is measured from the folded front edge: its depth less the front level's.
        expect(rows, pdf.name).toEqual(pdf.pattern.leaves.map((leaf) => expectedRow(leaf, pdf)));
      }
    });

    it("has marks that are whole steps of the kit, so that what is printed is what is meant", () => {
      for (const { pattern, units } of printed().pdfs) {
        const step = units === "in" ? 25.4 / 32 : pattern.fit.markStep;
        for (const { cuts } of pattern.leaves)
          for (const { at } of cuts) expect(Math.abs(at / step - Math.round(at / step))).toBeLessThan(1e-4);
      }
    });

    it("repeats its head on every page", () => {
      for (const { pdf, pages } of tables) for (const { head } of pages) expect(head, pdf.name).toEqual(HEAD);
    });

    it("says on every page what is measured, in which unit and from which edge, and names the levels", () => {
      for (const { pdf, pages } of tables) {
        const edge = pdf.pattern.fit.foldStyle === "stepped" ? "from the folded edge" : "from the fore-edge";
        for (const { page } of pages) {
          expect(page.text, pdf.name).toMatch(/Marks from the head/);
          expect(page.text, pdf.name).toContain(edge);
          for (const [i, { name }] of pdf.pattern.levels.entries())
            expect(page.text, pdf.name).toContain(`${i + 1} ${name}`);
        }
      }
    });

    it("adds up its check figures on each page and ends at the last", () => {
      for (const { pdf, pages } of tables) {
        const total = pdf.pattern.leaves.reduce((sum, { cuts }) => sum + cuts.length, 0);
        let soFar = 0;
        for (const [i, { rows, foot }] of pages.entries()) {
          const leaves = new Set(rows.map(({ leaf }) => Number(leaf)));
          const cuts = pdf.pattern.leaves
            .filter(({ leaf }) => leaves.has(leaf))
            .reduce((n, leaf) => n + leaf.cuts.length, 0);
          soFar += cuts;
          const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;
          const figures = `${counted(rows.length, "leaf", "leaves")} and ${counted(cuts, "cut", "cuts")} on this sheet`;
          expect(foot, pdf.name).toContain(`Check: ${figures}, ${soFar} of ${total} cuts so far.`);
          const ends = `Last row: leaf ${pdf.pattern.leaves.at(-1)!.leaf} ends the pattern.`;
          if (i === pages.length - 1) expect(foot, pdf.name).toContain(ends);
          else expect(foot, pdf.name).not.toContain("Last row");
        }
        expect(soFar, pdf.name).toBe(total);
      }
    });

    it("has a box to tick beside every row", () => {
      for (const { pdf, pages } of tables) {
        for (const { page, rows } of pages) {
          const boxes = page.outlines.filter(isTickBox).sort((a, b) => a.box.top - b.box.top);
          expect(boxes.length, `${pdf.name} page ${page.number}`).toBe(rows.length);
          for (const [i, { leaf }] of rows.entries()) {
            const { box } = boxes[i]!;
            const beside = page.words.filter(({ box: at }) => at.bottom > box.top - 0.5 && at.bottom < box.bottom + 1);
            expect(
              beside.map(({ text }) => text),
              `${pdf.name} page ${page.number}`,
            ).toContain(leaf);
          }
        }
      }
    });

    it("ends above the check figures", () => {
      for (const { pdf, pages } of tables) {
        for (const { page } of pages) {
          const check = page.words.find(({ text }) => text.startsWith("Check:"))!;
          const last = Math.max(...page.outlines.filter(isTickBox).map(({ box }) => box.bottom));
          const rowsEnd = Math.max(last, ...page.words.filter(({ y }) => y < check.y - 1).map(({ y }) => y));
          expect(check.box.top - rowsEnd, `${pdf.name} page ${page.number}`).toBeGreaterThan(1);
        }
      }
    });

    it("keeps every cell's words in its column", () => {
      const astray: string[] = [];
      for (const { pdf, pages } of tables) {
        for (const { page } of pages) {
          const heads = ["Leaf", "Book", "Marks", "Folds"].map(
            (word) => page.words.find(({ text, y }) => text.startsWith(word) && y > 25)!,
          );
          const lines = heads.map(({ box }) => box.left);
          const headFoot = Math.max(...heads.map(({ y }) => y));
          const foot = page.words.find(({ text }) => text.startsWith("Check:"))!.y;
          for (const { text, box, y } of page.words.filter(({ y }) => y > headFoot + 0.5 && y < foot - 1)) {
            const crossed = lines.some((line) => box.left < line - 0.3 && box.right > line - 0.2);
            if (crossed) astray.push(`${pdf.name} page ${page.number}: "${text}" at ${y.toFixed(1)} mm`);
          }
        }
      }
      expect(astray).toEqual([]);
    });
  });

  describe("inches in these tests", () => {
    it("are written in lowest terms", () => {
      expect([12.7, 34.925, 25.4, 0, 25.4 / 32, 158.75].map(inchFraction)).toEqual([
        "1/2",
        "1 3/8",
        "1",
        "0",
        "1/32",
        "6 1/4",
      ]);
    });
  });
}

function isTickBox({ paint, closed, rectangle, box }: Outline): boolean {
  const square = Math.abs(widthOf(box) - heightOf(box)) < 0.6;
  return paint === "stroke" && closed && rectangle && square && widthOf(box) > 2.5 && widthOf(box) < 6;
}
