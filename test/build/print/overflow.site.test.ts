import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { findOverflow, sayOverflow } from "../../../src/build/print/overflow.ts";
import { sharedBrowser } from "../../site/shared-site.ts";

/** A page of one sheet of 500 × 400 px with something in it. */
function sheet(content: string, kind = "data-sheet"): string {
  return `<!doctype html><style>body { margin: 0; width: 600px } section { width: 500px; overflow: hidden }
    [data-sheet] { height: 400px } div { height: 10px }</style>
    <section class="sheet first" ${kind}><h2>Sheet heading</h2>${content}</section>`;
}

describe("findOverflow", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await sharedBrowser();
    page = await browser.newPage();
    await page.setViewport({ width: 700, height: 900 });
    await page.emulateMediaType("print");
  });
  beforeEach(() => page.setViewport({ width: 700, height: 900 }));
  afterAll(async () => {
    await page?.close();
    await browser?.disconnect();
  });

  async function problems(html: string): Promise<string[]> {
    await page.setContent(html);
    return (await page.evaluate(findOverflow)).map(sayOverflow);
  }

  it("finds nothing where all fits, to the last pixel", async () => {
    expect(await problems(sheet('<div style="width: 500px"></div>'))).toEqual([]);
    expect(await problems(sheet('<p style="position: absolute; inset: 0; margin: 0"></p>'))).toEqual([]);
  });

  // 96 px are an inch (CSS).
  it("names what is too wide by one pixel, the heading above it and both widths in millimetres", async () => {
    expect(await problems(sheet('<p>before</p><div style="width: 501px"><b>1.50</b> for card</div>'))).toEqual([
      "below “Sheet heading”, “1.50 for card” needs 132.6 mm of width, and there are 132.3 mm",
    ]);
  });

  it("names the cell of a table that pushes it out, not the table", async () => {
    const row = Array.from({ length: 9 }, (_, i) => `<td style="min-width: 60px">cell ${i + 1}</td>`).join("");
    const [found] = await problems(sheet(`<table><tr>${row}</tr><tr><td>short</td></tr></table>`, "data-flow"));
    expect(found).toContain("“cell 9”");
  });

  it("names a sheet that is too high, but lets a flow be as high as it likes", async () => {
    const high = '<div style="height: 600px"></div>';
    const found = await problems(sheet(high));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/mm of height, and there are 105.8 mm/);
    expect(await problems(sheet(high, "data-flow"))).toEqual([]);
    expect(await problems(sheet('<div style="width: 800px"></div>', "data-flow"))).toHaveLength(1);
  });

  it("finds a word that cannot be broken, and a drawing wider than its sheet", async () => {
    expect(await problems(sheet(`<p>${"x".repeat(400)}</p>`))).toHaveLength(1);
    expect(await problems(sheet('<svg width="182mm" height="10mm"></svg>'))).toHaveLength(1);
  });

  it("finds what is wider than the page though no sheet is", async () => {
    const found = await problems(
      '<!doctype html><body style="margin: 0"><div style="width: 701px; height: 1px"></div>',
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/185.5 mm wide, and it has 185.2 mm/);
  });

  it("looks at what print media show", async () => {
    const screenOnly = "<style>@media print { .wide { display: none } }</style>";
    expect(await problems(sheet(`${screenOnly}<div class="wide" style="width: 900px"></div>`))).toEqual([]);
  });

  it("names each sheet that is at fault and no other", async () => {
    const wide = (name: string, width = 520) => sheet(`<div style="width: ${width}px">${name}</div>`);
    const found = await problems(`${wide("first")}${wide("second", 400)}${wide("third")}`);
    expect(found.map((text) => /first|second|third/.exec(text)?.[0])).toEqual(["first", "third"]);
  });
});
