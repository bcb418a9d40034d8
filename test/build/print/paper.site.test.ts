import { PDFDocument } from "@cantoo/pdf-lib";
import type { Browser } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PAPERS, pageRule } from "../../../src/output/views/paper.ts";
import { sharedBrowser } from "../../site/shared-site.ts";

// ISO 216:2007 Table 1 (seen through a second party): A4 210 × 297 mm. US Letter 8.5 × 11 in at 25.4 mm exactly.
const SIZES = { a4: [210, 297], letter: [215.9, 279.4] } as const;

describe("PAPERS", () => {
  it("are A4 and US Letter, upright", () => {
    expect(PAPERS.map(({ name }) => name)).toEqual(["a4", "letter"]);
    for (const { name, width, height } of PAPERS) {
      expect(width).toBeCloseTo(SIZES[name][0], 9);
      expect(height).toBeCloseTo(SIZES[name][1], 9);
    }
  });
});

describe("pageRule", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await sharedBrowser();
  });
  afterAll(() => browser?.disconnect());

  async function print(rule: string, body = "x"): Promise<PDFDocument> {
    const page = await browser.newPage();
    await page.setContent(`<!doctype html><style>${rule} body { margin: 0 }</style>${body}`);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    await page.close();
    return PDFDocument.load(pdf);
  }

  for (const paper of PAPERS) {
    it(`prints pages of ${paper.name}`, async () => {
      const { width, height } = (await print(pageRule(paper, "foot"))).getPage(0).getSize();
      // CSS Values 4, absolute lengths: 1 pt = 25.4 / 72 mm.
      expect(Math.abs((width * 25.4) / 72 - SIZES[paper.name][0])).toBeLessThan(0.2);
      expect(Math.abs((height * 25.4) / 72 - SIZES[paper.name][1])).toBeLessThan(0.2);
    });

    it(`leaves room on ${paper.name} for a sheet of 182 × 245 mm, and for none of 247 mm`, async () => {
      const sheet = '<div style="width: 182mm; height: 245mm; break-after: page"></div>';
      const pages = (await print(pageRule(paper, "foot"), `${sheet}${sheet}<p>x`)).getPageCount();
      expect(pages).toBe(3);
      const higher = sheet.replace("245mm", "247mm");
      expect((await print(pageRule(paper, "foot"), `${higher}<p>x`)).getPageCount()).toBeGreaterThan(2);
    });
  }

  it("is still one rule when the kit's name holds quotes, backslashes and braces", async () => {
    for (const footer of ['a "quoted" name', "back\\slash \\", "} body { display: none }", "two\nlines", "'"]) {
      const { width } = (await print(pageRule(PAPERS[0]!, footer))).getPage(0).getSize();
      expect(Math.abs((width * 25.4) / 72 - 210), footer).toBeLessThan(0.2);
    }
  });
});
