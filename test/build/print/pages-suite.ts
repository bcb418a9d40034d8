import { statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, it } from "vitest";
import type { Printed } from "./printed.ts";
import { type Box, type ReadPage, readPdf, widthOf } from "./read-pdf.ts";

// ISO 216:2007 Table 1 (seen through a second party): A4 is 210 × 297 mm. US Letter is 8.5 × 11 in, the inch 25.4 mm exactly.
const PAPER = {
  a4: { width: 210, height: 297, label: "A4" },
  letter: { width: 215.9, height: 279.4, label: "US Letter" },
};

/** What both papers print on without a printer's margin cutting it, and the column that all words are set in; mm. */
const PRINTABLE = { width: 198, height: 267 };
const COLUMN = 182;

function centred(page: ReadPage, width: number, height: number): Box {
  const [x, y] = [(page.width - width) / 2, (page.height - height) / 2];
  return { left: x, top: y, right: x + width, bottom: y + height };
}

function outside(box: Box, room: Box, slack = 0): boolean {
  return (
    box.left < room.left - slack ||
    box.top < room.top - slack ||
    box.right > room.right + slack ||
    box.bottom > room.bottom + slack
  );
}

export function pagesSuite(printed: () => Printed): void {
  describe("every page", () => {
    it("is A4 or US Letter within 0.2 mm, whichever its file is named after", () => {
      for (const { name, paper, pages } of printed().pdfs) {
        expect(pages.length, name).toBeGreaterThan(0);
        for (const { number, width, height } of pages) {
          expect(Math.abs(width - PAPER[paper].width), `${name} page ${number} width`).toBeLessThan(0.2);
          expect(Math.abs(height - PAPER[paper].height), `${name} page ${number} height`).toBeLessThan(0.2);
        }
      }
    });

    it("shows the same on both papers", () => {
      const { pdfs } = printed();
      for (const a4 of pdfs.filter(({ paper }) => paper === "a4")) {
        const letter = pdfs.find(({ name }) => name === a4.name.replace(/a4$/, "letter"))!;
        const contents = (pages: readonly ReadPage[]): string[] =>
          pages.map(({ text }) => text.replaceAll(PAPER.letter.label, PAPER.a4.label));
        expect(contents(letter.pages), a4.name).toEqual(contents(a4.pages));
      }
    });

    it("lies inside 198 × 267 mm about its middle", () => {
      for (const { name, pages } of printed().pdfs) {
        for (const page of pages) {
          const room = centred(page, PRINTABLE.width, PRINTABLE.height);
          const drawn = page.outlines.filter(({ box, lineWidth }) => outside(box, room, -lineWidth / 2));
          expect(drawn, `${name} page ${page.number}`).toEqual([]);
          const said = page.words.filter(({ box }) => outside(box, room));
          expect(
            said.map(({ text }) => text),
            `${name} page ${page.number}`,
          ).toEqual([]);
        }
      }
    });

    it("cuts no words off at the sides of its column", () => {
      const cut = printed().pdfs.flatMap(({ name, pages }) =>
        pages.flatMap((page) =>
          page.words
            .filter(({ box }) => outside(box, centred(page, COLUMN, page.height), 0.2))
            .map(({ text }) => `${name} page ${page.number}: ${text}`),
        ),
      );
      expect(cut).toEqual([]);
    });

    it("sets no words over others", () => {
      const struck = printed().pdfs.flatMap(({ name, pages }) =>
        pages.flatMap((page) => overlaps(page).map((pair) => `${name} page ${page.number}: ${pair}`)),
      );
      expect(struck).toEqual([]);
    });

    it("says its number, the number of pages, the kit, the paper and the book in its foot", () => {
      for (const { name, pages, paper, pattern } of printed().pdfs) {
        for (const { number, words, text } of pages) {
          const numbers = [...text.matchAll(/page (\d+) of (\d+)/g)].map(([, n, m]) => [Number(n), Number(m)]);
          expect(numbers, `${name} page ${number}`).toEqual([[number, pages.length]]);
          const foot = Math.max(...words.map(({ y }) => y));
          const line = words.filter(({ y }) => Math.abs(y - foot) < 0.1).map((run) => run.text);
          const said = line.join(" ");
          expect(said, name).toContain(PAPER[paper].label);
          expect(said, name).toContain(`${pattern.book.leaves} leaves`);
          expect(said.replace(/\s+/g, " "), name).toContain(pattern.title);
        }
      }
    });
  });

  describe("the pages of a packet", () => {
    // What a plain kit of 112 leaves takes at most.
    it("are few", () => {
      const gull = printed().packets.find(({ name }) => name === "little-gull/packet-a4")!;
      expect(gull.pattern.leaves).toHaveLength(112);
      expect(gull.pages.length).toBeLessThanOrEqual(12);
    });

    // And a lit one of 204 leaves.
    it("are few with light and window, too", async () => {
      const { pages } = await readPdf(join(inject("site").folder, "dist/kits/harbour-moon/packet-a4.pdf"));
      expect(pages.length).toBeLessThanOrEqual(24);
    });

    it("are the same without the strips in the edition for who marks from the table", async () => {
      for (const { name, path, pages } of printed().packets) {
        const { pages: own } = await readPdf(path.replace("/packet-", "/packet-bench-"));
        const strips = pages.filter(isStrips).length;
        expect(strips, name).toBeGreaterThan(0);
        expect(own.filter(isStrips), name).toEqual([]);
        expect(own.length, name).toBe(pages.length - strips);
        const read = own.filter((page) => !isCutOut(page)).length;
        expect(own[0]!.text, name).toContain(`In all ${Math.ceil(read / 2) + own.length - read} sheets of paper.`);
        expect(own[0]!.text, name).not.toContain("Marking strips");
      }
    });

    it("hold five lines of words or more, but for what is cut out", () => {
      for (const { name, pages } of printed().pdfs) {
        for (const { number, words } of pages.filter((page) => !isCutOut(page)))
          expect(linesOf(words), `${name} page ${number}`).toBeGreaterThanOrEqual(5);
      }
    });

    it("are filled for more than half, but for the last before the sheets to cut out", () => {
      for (const { name, pages } of printed().packets) {
        const read = pages.filter((page) => !isCutOut(page));
        for (const page of read.slice(0, -1)) {
          const foot = Math.max(...page.words.map(({ y }) => y));
          const last = Math.max(...page.words.filter(({ y }) => y < foot - 1).map(({ y }) => y));
          expect(last, `${name} page ${page.number}`).toBeGreaterThan(page.height / 2);
        }
      }
    });

    it("leave no heading without its text", () => {
      for (const { name, pages } of printed().pdfs) {
        for (const { number, words } of pages.filter((page) => !isCutOut(page))) {
          const foot = Math.max(...words.map(({ y }) => y));
          const last = words.filter(({ y }) => y < foot - 1).sort((a, b) => b.y - a.y)[0]!;
          expect(last.size, `${name} page ${number}: ${last.text}`).toBeLessThan(name.includes("large") ? 7 : 4);
        }
      }
    });

    it("are counted on the cover: those to read, and the sheets to cut out, with their sum of paper", () => {
      for (const { name, pages } of printed().packets) {
        const cover = pages[0]!.text;
        const read = pages.filter((page) => !isCutOut(page)).length;
        expect(cover, name).toContain(`To read and to work by: ${read} pages`);
        expect(cover, name).toContain(`(pages 1 to ${read})`);
        const paper = Math.ceil(read / 2) + pages.length - read;
        expect(cover, name).toContain(`In all ${paper} sheets of paper.`);
        const cutOut = pages.slice(read);
        expect(cutOut.every(isCutOut), name).toBe(true);
      }
    });
  });

  describe("every file", () => {
    it("is under 1.6 MB", () => {
      for (const { name, path } of printed().pdfs) expect(statSync(path).size, name).toBeLessThan(1_600_000);
    });
  });
}

/** True-scale sheets have bars to measure. */
function isCutOut({ text }: ReadPage): boolean {
  return /true scale/.test(text) && /100 mm/.test(text);
}

function isStrips({ text }: ReadPage): boolean {
  return text.includes("Marking strips, true scale:");
}

/** Lines of words on a page: runs at one height. */
function linesOf(words: ReadPage["words"]): number {
  return new Set(words.map(({ y }) => Math.round(y))).size;
}

/** Pairs of runs whose small letters stand on one another by more than 0.3 mm both ways. */
function overlaps(page: ReadPage): string[] {
  const sorted = [...page.words].sort((a, b) => a.box.left - b.box.left);
  return sorted.flatMap((one, i) => {
    const found: string[] = [];
    for (const other of sorted.slice(i + 1)) {
      if (other.box.left > one.box.right) break;
      const across = Math.min(one.box.right, other.box.right) - other.box.left;
      const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
      if (across > Math.min(0.3, widthOf(other.box) / 2) && down > 0.3) found.push(`"${one.text}" and "${other.text}"`);
    }
    return found;
  });
}
