import { PDFDocument } from "@cantoo/pdf-lib";
import { describe, expect, it } from "vitest";
import { countPdfPages } from "../../../src/build/print/count-pdf-pages.ts";
import { finishPdf } from "../../../src/build/print/finish-pdf.ts";

async function pdfOf(pages: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  for (let i = 0; i < pages; i += 1) pdf.addPage([100, 200]);
  return pdf.save({ useObjectStreams: false, addDefaultPage: false });
}

describe("countPdfPages", () => {
  it.each([1, 2, 230])("counts %i pages of a finished PDF", async (pages) => {
    expect(countPdfPages(Buffer.from(await finishPdf(await pdfOf(pages), "t")))).toBe(pages);
  });

  it("fails at a PDF that was not finished", async () => {
    const raw = Buffer.from(await pdfOf(3));
    expect(() => countPdfPages(raw)).toThrow(Error);
  });
});
