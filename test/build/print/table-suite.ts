import { beforeAll, describe, expect, it } from "vitest";
import type { Printed, PrintedPdf } from "./printed.ts";
import { heightOf, MM_PER_POINT, type Outline, widthOf } from "./read-pdf.ts";
import { ARROW, expectedWork, inchFraction, nameOf, type TablePage, type TableRow, tableOf } from "./table.ts";

/** Picture leaves to a batch where a kit says nothing. */
const BATCH = 20;

export function tableSuite(printed: () => Printed): void {
  describe("the printed table", () => {
    const tables: { pdf: PrintedPdf; pages: TablePage[]; rows: TableRow[] }[] = [];
    beforeAll(async () => {
      for (const pdf of printed().pdfs) {
        const pages = await tableOf(pdf);
        tables.push({ pdf, pages, rows: pages.flatMap((page) => page.rows) });
      }
    });

    it("is in every packet and every file of the table alone", () => {
      for (const { pdf, pages } of tables) {
        expect(pages.length, pdf.name).toBeGreaterThan(0);
        if (pdf.kind !== "packet") expect(pages.length, pdf.name).toBe(pdf.pages.length);
      }
    });

    it("has every leaf of the pattern once, in order, with its page, and marks and folds in one line from head to tail", () => {
      for (const { pdf, rows } of tables) {
        // In stepped kits a cut is measured from the folded front edge: its depth less the front level's.
        const leaves = new Map(pdf.pattern.leaves.map((leaf) => [leaf.leaf, leaf]));
        const printedLeaves = rows.flatMap(({ first, last }) =>
          Array.from({ length: last - first + 1 }, (_, i) => first + i),
        );
        expect(printedLeaves, pdf.name).toEqual([...leaves.keys()]);
        for (const { first, last, page, work } of rows) {
          const where = `${pdf.name} leaf ${first}`;
          for (let leaf = first; leaf <= last; leaf += 1)
            expect(work.endsWith(expectedWork(leaves.get(leaf)!, pdf)), `${where}: ${work}`).toBe(true);
          const ends = [leaves.get(first)!, leaves.get(last)!];
          if (ends.every(({ bookPage }) => bookPage !== null))
            expect(page, where).toBe(
              first === last ? String(ends[0]!.bookPage) : ends.map(({ bookPage }) => bookPage).join("–"),
            );
          else for (const end of ends) expect(work, where).toContain(nameOf(end) ?? `p. ${end.bookPage}`);
        }
      }
    });

    it("says whole leaves that are folded alike once, and nothing else", () => {
      for (const { pdf, rows } of tables) {
        const starts = new Set(batchStarts(pdf));
        for (const [i, { first, last, work }] of rows.entries()) {
          if (last > first) expect(work, pdf.name).toMatch(/whole leaf$/);
          const before = rows[i - 1];
          if (before?.last !== first - 1 || starts.has(first)) continue;
          const alike = /\d whole leaf$/.exec(work)?.[0];
          if (alike) expect(before.work.endsWith(alike), `${pdf.name} leaf ${first}`).toBe(false);
        }
      }
    });

    it("has marks that are whole steps of the kit, so that what is printed is what is meant", () => {
      for (const { pattern, units } of printed().pdfs) {
        const step = units === "in" ? 25.4 / 32 : pattern.fit.markStep;
        for (const { cuts } of pattern.leaves)
          for (const { at } of cuts) expect(Math.abs(at / step - Math.round(at / step))).toBeLessThan(1e-4);
      }
    });

    it("comes batch by batch, each with its leaves in its heading", () => {
      for (const { pdf, pages } of tables) {
        const said = pages.map(({ page }) => page.text).join(" ");
        for (const [i, start] of batchStarts(pdf).slice(0, -1).entries())
          expect(said, pdf.name).toMatch(new RegExp(`Batch ${i + 1}: leaves ${start} to \\d+`));
      }
    });

    it("says what is measured, in which unit and from which edge, and names the levels", () => {
      for (const { pdf } of tables) {
        const edge = pdf.pattern.fit.foldStyle === "stepped" ? "from the folded edge" : "from the fore-edge";
        const said = pdf.pages.map(({ text }) => text).join(" ");
        expect(said, pdf.name).toMatch(/Marks from the head/);
        expect(said, pdf.name).toContain(edge);
        for (const [i, { name }] of pdf.pattern.levels.entries()) expect(said, pdf.name).toContain(`${i + 1} ${name}`);
      }
    });

    it("has a head over each batch, on each of its pages", () => {
      for (const { pdf, pages } of tables)
        for (const { heads, page, rows } of pages) {
          const worked = rows.some(({ work }) => work.includes(ARROW));
          if (worked) expect(heads.length, `${pdf.name} page ${page.number}`).toBeGreaterThan(0);
        }
    });

    it("adds up its check figures batch by batch and ends at the last leaf", () => {
      for (const { pdf, pages } of tables) {
        const { leaves } = pdf.pattern;
        const total = leaves.reduce((sum, { cuts }) => sum + cuts.length, 0);
        const feet = pages.flatMap((page) => page.feet);
        const starts = batchStarts(pdf);
        let soFar = 0;
        for (const [i, start] of starts.slice(0, -1).entries()) {
          const own = leaves.filter(({ leaf }) => leaf >= start && leaf < starts[i + 1]!);
          const cuts = own.reduce((sum, leaf) => sum + leaf.cuts.length, 0);
          soFar += cuts;
          const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
          const figures = `${own.length} ${own.length === 1 ? "leaf" : "leaves"}, ${counted(cuts, "cut")}`;
          expect(feet.join(" "), pdf.name).toContain(`Check: ${figures}; ${soFar} of ${total} cuts so far.`);
        }
        expect(soFar, pdf.name).toBe(total);
        expect(feet.at(-1), pdf.name).toContain(`Leaf ${leaves.at(-1)!.leaf} ends the pattern.`);
      }
    });

    it("has a box to tick beside every row, but in short", () => {
      for (const { pdf, pages } of tables.filter(({ pdf: { kind } }) => kind !== "table-compact")) {
        for (const { page, rows } of pages) {
          const boxes = page.outlines.filter(isTickBox);
          for (const { first, last } of rows) {
            const leaf = first === last ? String(first) : `${first}–${last}`;
            const beside = page.words.filter(({ text }) => text.trim() === leaf).map(({ box }) => box);
            const ticked = boxes.some(({ box }) =>
              beside.some(
                (at) => at.left > box.right && at.left - box.right < 6 && at.bottom > box.top && at.top < box.bottom,
              ),
            );
            expect(ticked, `${pdf.name} page ${page.number} leaf ${leaf}`).toBe(true);
          }
        }
      }
    });

    it("is set in 9 pt or more, and every figure of the large one in 18 pt or more", () => {
      for (const { pdf, pages } of tables) {
        const least = (pdf.kind === "table-large" ? 18 : 9) * MM_PER_POINT - 0.02;
        for (const { page } of pages) {
          const foot = Math.max(...page.words.map(({ y }) => y));
          const rows = page.words.filter(({ text }) => text.trim().startsWith(ARROW)).map(({ y }) => y);
          const worked = page.words.filter(
            ({ text, y }) =>
              /\d/.test(text) && y < foot - 1 && (pdf.kind !== "packet" || rows.some((row) => Math.abs(row - y) < 0.3)),
          );
          expect(
            worked.filter(({ size }) => size < least).map(({ text }) => text),
            `${pdf.name} page ${page.number}`,
          ).toEqual([]);
        }
      }
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

/** First leaves of the batches, and the leaf after the last: as even as they can be. */
function batchStarts({ pattern }: PrintedPdf): number[] {
  const leaves = pattern.leaves.filter(({ patternPage }) => patternPage !== null).map(({ leaf }) => leaf);
  const total = Math.ceil(leaves.length / BATCH);
  const starts = Array.from({ length: total }, (_, i) => leaves[Math.round((i * leaves.length) / total)]!);
  return [...starts, leaves.at(-1)! + 1];
}

function isTickBox({ paint, closed, rectangle, box }: Outline): boolean {
  const square = Math.abs(widthOf(box) - heightOf(box)) < 0.6;
  return paint === "stroke" && closed && rectangle && square && widthOf(box) > 2.5 && widthOf(box) < 6;
}
