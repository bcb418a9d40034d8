import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, inject, it } from "vitest";
import { bytesOf } from "./printed.ts";

/** What is read on paper at a bench, points (common practice, no source). */
const LEAST = 7;

/** A PDF keeps six decimals of a matrix, and a style sheet's pixels are whole 64ths: a height may be this much short. */
const ROUNDING = 0.02;

/** Heights of a PDF's runs of letters, pt, each with its page and words. Letters that are set narrower keep their height. */
async function heightsIn(bytes: Uint8Array): Promise<{ readonly height: number; readonly told: string }[]> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = await Promise.all(Array.from({ length: document.numPages }, (_, i) => document.getPage(i + 1)));
  const heights = await Promise.all(
    pages.map(async (page) => {
      const { items } = await page.getTextContent();
      return items.flatMap((item) => {
        if (!("str" in item) || item.str.trim() === "") return [];
        const height = Math.hypot(item.transform[2], item.transform[3]);
        return [{ height, told: `page ${page.pageNumber}, ${height.toFixed(2)} pt: ${item.str}` }];
      });
    }),
  );
  await document.destroy();
  return heights.flat();
}

describe("letters in every PDF of a site, diagrams and sheets too", () => {
  it.each(["site", "ownKits"] as const)(
    "of the project %s are 7 pt high or more",
    { timeout: 300_000 },
    async (project) => {
      const pdfs = bytesOf(inject(project).folder);
      expect(pdfs.size).toBeGreaterThan(0);
      for (const [path, bytes] of pdfs) {
        // Its words are strokes for a pencil, see the gallery of drawings.
        if (path.endsWith("/cut-sheets.pdf")) continue;
        const heights = await heightsIn(bytes);
        expect(heights.length, path).toBeGreaterThan(20);
        expect(
          heights.filter(({ height }) => height < LEAST - ROUNDING).map(({ told }) => told),
          path,
        ).toEqual([]);
      }
    },
  );
});
