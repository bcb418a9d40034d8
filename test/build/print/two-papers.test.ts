import { deflateSync, inflateSync } from "node:zlib";
import { PDFArray, PDFDocument, PDFName, PDFRawStream } from "@cantoo/pdf-lib";
import { describe, expect, it } from "vitest";
import { finishPdf } from "../../../src/build/print/finish-pdf.ts";
import { partPapers } from "../../../src/build/print/two-papers.ts";
import { PAPERS } from "../../../src/output/views/paper.ts";
import { plainPdf } from "./plain-pdf.ts";

const [A4, LETTER] = PAPERS;

const block = (x: number, y: number, letter: string): string =>
  `BT\n/F4 11.33 Tf\n1 0 0 -1 ${x} ${y} Tm\n<${letter}> Tj\nET\n`;

const PAGE_NUMBER = block(700, 1034, "0001");
const FOOTER = block(52.9, 1034, "00A4") + block(52.9, 1048, "00A5");
const OTHER = block(52.9, 23.5, "00B4") + block(52.9, 37.5, "00B5");
const BODY = "q\n165.625 253.125 2150 2900 re\nW n\nBT\n/F4 12 Tf\n1 0 0 -1 60 20 Tm\n<0009> Tj\nET\nQ\n";
const CONTENTS = `.24 0 0 -.24 0 841.92 cm\nq\n3.125 0 0 3.125 0 0 cm\n.2 .2 .2 rg\n${OTHER}${PAGE_NUMBER}${FOOTER}Q\n${BODY}`;

function printedPdf(contents: string, extra = "<<>>"): Uint8Array {
  const packed = deflateSync(Buffer.from(contents, "latin1")).toString("latin1");
  return plainPdf(
    "<</Type /Catalog\n/Pages 3 0 R\n/Outlines 6 0 R>>",
    "<</Title (t)>>",
    "<</Type /Pages\n/Kids [4 0 R]\n/Count 1>>",
    "<</Type /Page\n/MediaBox [0 0 594.96 841.92]\n/Contents 5 0 R\n/Annots [7 0 R]\n/Parent 3 0 R>>",
    `<</Filter /FlateDecode\n/Length ${packed.length}>> stream\n${packed}\nendstream`,
    "<</Title (Head)\n/Dest [4 0 R /XYZ 39.75 780.5 0]>>",
    "<</Type /Annot\n/Subtype /Link\n/Rect [40 700 60 712]\n/Dest [4 0 R /XYZ 39.75 780.5 0]>>",
    extra,
  );
}

async function read(parts: ReturnType<typeof partPapers>, which: 0 | 1) {
  const pdf = await PDFDocument.load(await finishPdf(parts![which], "t"));
  const page = pdf.getPage(0);
  const streams = page.node.lookup(PDFName.of("Contents"), PDFArray);
  const contents = Array.from({ length: streams.size() }, (_, i) =>
    inflateSync(streams.lookup(i, PDFRawStream).contents).toString("latin1"),
  ).join("");
  const rect = page.node.lookup(PDFName.of("Annots"), PDFArray).lookup(0)!.toString();
  return { size: page.getSize(), contents, rect, outline: pdf.catalog.lookup(PDFName.of("Outlines"))!.toString() };
}

describe("partPapers(raw, from, to)", () => {
  const parts = partPapers(printedPdf(CONTENTS), A4, LETTER);

  it("leaves the other paper's footer out of the first file, and nothing else", async () => {
    const { size, contents, outline } = await read(parts, 0);
    expect(size).toEqual({ width: 594.96, height: 841.92 });
    expect(contents).toBe(CONTENTS.replace(OTHER, ""));
    expect(outline).toContain("/XYZ 39.75 780.5 0");
  });

  it("puts that footer in the place of the first one in the second file", async () => {
    const { contents } = await read(parts, 1);
    const lowered = block(52.9, 1034, "00B4") + block(52.9, 1048, "00B5");
    expect(contents.split("\n").slice(1).join("\n")).toBe(
      CONTENTS.replace(OTHER, "").replace(FOOTER, lowered).split("\n").slice(1).join("\n"),
    );
  });

  it("moves all that is on the page to where the content box is on the other paper", async () => {
    const { size, contents, rect, outline } = await read(parts, 1);
    expect(size).toEqual({ width: 612, height: 792 });
    // Content boxes of 182 × 246 mm: (215.9 − 210) / 2 = 2.95 mm to the right. Tops stand 0.42 of the spare height from the head:
    // 21.42 of 51 and 14.028 of 33.4 mm, so 265.372 instead of 275.58 mm above the foot. 1 mm = 72 / 25.4 pt.
    expect(contents.split("\n")[0]).toBe(".24 0 0 -.24 8.3622 812.9839 cm");
    expect(outline).toMatch(/\/XYZ 48\.112 751\.564 0/);
    expect(rect).toMatch(/\/Rect \[ 48\.362 671\.064 68\.362 683\.064 \]/);
  });

  it.each([
    ["no footer at the head", CONTENTS.replace(OTHER, "")],
    ["no footer at the foot", CONTENTS.replace(FOOTER, "")],
    ["a group within the margins", CONTENTS.replace(PAGE_NUMBER, `q\n${PAGE_NUMBER}Q\n`)],
    ["another scale", CONTENTS.replace("3.125 0 0 3.125", "2 0 0 2")],
    ["text at an angle", CONTENTS.replace("1 0 0 -1 52.9 23.5 Tm", "0 1 1 0 52.9 23.5 Tm")],
    ["nothing", ""],
  ])("parts no page that has %s", (_, contents) => {
    expect(partPapers(printedPdf(contents), A4, LETTER)).toBeUndefined();
  });

  it("parts no file with patterns, nor one that is no PDF", () => {
    expect(partPapers(printedPdf(CONTENTS, "<</PatternType 2>>"), A4, LETTER)).toBeUndefined();
    expect(partPapers(Buffer.from("no PDF"), A4, LETTER)).toBeUndefined();
  });
});
