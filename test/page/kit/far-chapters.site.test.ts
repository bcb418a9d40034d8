import type { Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { newReader, settled, visit } from "../../site/visit.ts";

const KIT = "kits/harbour-moon/index.html";

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

const table = (page: Page): Promise<string> => page.$eval("[data-part='pattern']", (part) => part.textContent!);

/** Whether the browser lays the table's first row out. */
const isLaidOut = (page: Page): Promise<boolean> =>
  page.$eval("table.pattern tbody tr", (row) => row.checkVisibility({ contentVisibilityAuto: true }));

/** A kit's page with all chapters open, and the panel in sight. */
async function openAll(path: string): Promise<Page> {
  const { page } = await newReader(site);
  await visit(site, page, path);
  await page.$$eval(".chapter, .more-fields", (all) => {
    for (const one of all) one.setAttribute("open", "");
  });
  await page.focus("#fit-leafHeight");
  await settled(page);
  return page;
}

async function write(page: Page, name: string, text: string): Promise<void> {
  await page.$eval(`#fit-${name}`, (field) => (field as HTMLInputElement).select());
  await page.type(`#fit-${name}`, text);
  await settled(page);
}

describe("a chapter that stands open far below the panel", () => {
  it.each([
    ["other marks in every row", "height", "126", "picture=126"],
    ["fewer rows", "leaves", "196", "leaves=196"],
  ])("is not laid out at a key, and follows it: %s", async (_, field, text, address) => {
    const page = await openAll(KIT);
    expect(await isLaidOut(page)).toBe(false);
    const own = await table(page);
    await write(page, field, text);
    expect(await isLaidOut(page)).toBe(false);
    expect(new URL(page.url()).search).toBe(`?${address}`);
    const followed = await table(page);
    expect(followed).not.toBe(own);
    const asked = await openAll(`${KIT}?${address}`);
    expect(followed).toBe(await table(asked));
    // A browser lays out what lies in front.
    await page.bringToFront();
    await page.evaluate(() => document.querySelector("table.pattern")!.scrollIntoView({ behavior: "instant" }));
    await page.waitForFunction(() =>
      document.querySelector("table.pattern tbody tr")!.checkVisibility({ contentVisibilityAuto: true }),
    );
    await page.close();
    await asked.close();
  });

  it("follows in a browser that cannot be asked what it lays out", async () => {
    const { page } = await newReader(site);
    await page.evaluateOnNewDocument(() => Object.assign(Element.prototype, { checkVisibility: undefined }));
    await visit(site, page, KIT);
    await write(page, "leaves", "196");
    expect(await page.$$eval("table.pattern tbody tr", (rows) => rows.length)).toBe(196);
    await page.close();
  });

  it("is found by its link", async () => {
    const page = await openAll(KIT);
    await page.click('.contents a[href="#window"]');
    await page.waitForFunction(() => Math.abs(document.querySelector("#window")!.getBoundingClientRect().top) < 120);
    // It does not go on from there.
    await settled(page);
    expect(await page.$eval("#window", (one) => Math.abs(one.getBoundingClientRect().top))).toBeLessThan(120);
    await page.close();
  });
});
