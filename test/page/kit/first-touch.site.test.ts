import type { HTTPRequest, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newDevice, type OpenedSite, openSite } from "../../site/shared-site.ts";
import { settled } from "../../site/visit.ts";

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** Opens the kit's page in a fresh browser profile; `late` decides what becomes of a request for the fitting script. */
async function openWith(late: (request: HTTPRequest) => void): Promise<{ page: Page; asked: () => number }> {
  const context = await newDevice(site.browser);
  const page = await context.newPage();
  let count = 0;
  await page.setBypassServiceWorker(true);
  await page.setRequestInterception(true);
  page.on("request", (request) => {
    // Its worker asks for the same script.
    if (!request.url().endsWith("/refit.js") || request.resourceType() !== "script" || !request.frame())
      return void request.continue();
    count++;
    late(request);
  });
  await page.goto(`${site.host.site}kits/little-gull/index.html`, { waitUntil: "load" });
  return { page, asked: () => count };
}

const state = (page: Page): Promise<string> => page.$eval("[data-refit-state]", (one) => one.textContent!);
const says = (page: Page, text: string): Promise<unknown> =>
  page.waitForFunction(
    (wanted) => document.querySelector("[data-refit-state]")!.textContent!.includes(wanted),
    {},
    text,
  );

describe("the fit panel before its script is there", () => {
  it("fetches nothing until the reader turns to it", async () => {
    const { page, asked } = await openWith((request) => void request.continue());
    await settled(page);
    expect(asked()).toBe(0);
    await page.focus("#fit-leaves");
    await page.waitForFunction(() => window.leaflightRefit !== undefined);
    // Its worker asks for the same script, at times in the page's name: what the page asked for is counted.
    expect(await page.$$eval("script[src$='/refit.js']", (scripts) => scripts.length)).toBe(1);
    expect(await state(page)).toBe("");
    await page.close();
  });

  it("takes what is written meanwhile, and Enter does not load the page again", async () => {
    let isHeld = true;
    const held: HTTPRequest[] = [];
    const { page, asked } = await openWith((request) => void (isHeld ? held.push(request) : request.continue()));
    const release = (): void => {
      isHeld = false;
      for (const request of held) void request.continue();
    };
    await page.$eval("#fit-leaves", (field) => (field as HTMLInputElement).select());
    await page.type("#fit-leaves", "170");
    await page.keyboard.press("Enter");
    expect(new URL(page.url()).search).toBe("");
    await expect.poll(asked, { timeout: 60_000 }).toBe(1);
    release();
    await says(page, "worked out for your book");
    expect(new URL(page.url()).searchParams.get("leaves")).toBe("170");
    expect(await page.$eval("#fit-leaves", (field) => (field as HTMLInputElement).value)).toBe("170");
    await page.close();
  });

  it("says where it cannot be fetched, and tries again at the next figure", async () => {
    let broken = true;
    const { page, asked } = await openWith((request) => void (broken ? request.abort() : request.continue()));
    await page.focus("#fit-leaves");
    await says(page, "could not be loaded");
    broken = false;
    await page.$eval("#fit-leaves", (field) => (field as HTMLInputElement).select());
    await page.type("#fit-leaves", "170");
    await says(page, "worked out for your book");
    expect(asked()).toBeGreaterThanOrEqual(2);
    await page.close();
  });

  it("fits at once where the address carries a book, and follows the units", async () => {
    const { page } = await openWith((request) => void request.continue());
    await page.goto(`${site.host.site}kits/little-gull/index.html?leaves=170`, { waitUntil: "load" });
    await says(page, "worked out for your book");
    await page.goto(`${site.host.site}kits/little-gull/index.html`, { waitUntil: "load" });
    const height = (): Promise<string> => page.$eval("#fit-leafHeight", (field) => (field as HTMLInputElement).value);
    const before = await height();
    await page.click('.hero input[name="units"]:not(:checked)');
    await page.waitForFunction(
      (was) => document.querySelector<HTMLInputElement>("#fit-leafHeight")!.value !== was,
      {},
      before,
    );
    expect(Number.parseFloat(await height())).toBeCloseTo(Number.parseFloat(before) / 25.4, 1);
    await page.close();
  });
});
