import axe from "axe-core";
import type { BrowserContext, Page } from "puppeteer";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newDevice, type OpenedSite, openSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";

const PAGE = "kits/harbour-moon/make/index.html";

let site: OpenedSite;
let device: BrowserContext;
let page: Page;
beforeAll(async () => {
  site = await openSite();
});
beforeEach(async () => {
  device = await newDevice(site.browser);
  page = await device.newPage();
});
afterEach(() => device?.close());
afterAll(() => site?.close());

async function open(path = PAGE): Promise<void> {
  await visit(site, page, path);
  await page.waitForSelector("[data-now]:not([hidden])");
}

/** Presses it wherever it stands. */
const press = (selector: string): Promise<void> => page.$eval(selector, (one) => (one as HTMLElement).click());
const openStages = (): Promise<string[]> =>
  page.$$eval("[data-stage][open]", (all) => all.map((one) => (one as HTMLElement).dataset["stage"]!));

describe("the page on which a piece is made", () => {
  it("opens at the stage where the work is, and keeps what is ticked with the piece", async () => {
    await open();
    expect(await openStages()).toEqual(["prepare"]);
    await page.waitForSelector('[data-item="step gauge"]');
    expect(await page.$$('[data-stage="prepare"] .drawn svg')).toHaveLength(3);
    await press('[data-item="step gauge"]');
    await textOf(page, '[data-stage="prepare"] [data-state]', /^1 of 3/);
    await press("[data-tick]");
    await textOf(page, "[data-at-hand]", /^1 of \d+ at hand/);
    await page.waitForFunction(() => location.search.startsWith("?piece="));
    await page.type("#notes", "The spine is stiff.");
    await page.$eval("#notes", (one) => (one as HTMLElement).blur());
    await new Promise((resolve) => setTimeout(resolve, 1000));
    await open();
    await textOf(page, '[data-stage="prepare"] [data-state]', /^1 of 3/);
    await textOf(page, "[data-at-hand]", /^1 of \d+ at hand/);
    expect(await page.$eval("#notes", (one) => (one as HTMLTextAreaElement).value)).toBe("The spine is stiff.");
    await page.waitForSelector('[data-item="step gauge"]');
    expect(await page.$eval('[data-item="step gauge"]', (one) => (one as HTMLInputElement).checked)).toBe(true);
  });

  it("ticks a batch, gives its table, and leads on to the bench with the same piece", async () => {
    await open();
    await press('[data-stage="fold"] > summary');
    await page.waitForSelector(".batch-tick");
    await press(".batch-tick");
    await textOf(page, ".batch-list li", /20 of 20 folded/);
    await press('[data-batch="2"] > summary');
    await page.waitForSelector('[data-batch="2"] table');
    const leaves = await page.$$eval('[data-batch="2"] tbody th', (all) => all.map((one) => Number(one.textContent)));
    expect(leaves).toEqual(Array.from({ length: 20 }, (_, i) => 33 + i));
    await page.waitForFunction(() => document.querySelector<HTMLAnchorElement>("[data-go]")!.href.includes("piece="));
    await Promise.all([page.waitForNavigation(), press("[data-go]")]);
    expect(page.url()).toContain("/bench/");
    // Back from there, past two steps that are done at the bench.
    await page.waitForSelector("[data-bench]:not([hidden])");
    for (let i = 0; i < 2; i += 1) await press("[data-go]");
    await page.waitForFunction(() => new URLSearchParams(location.search).has("piece"));
    await open(`${PAGE}${new URL(page.url()).search}`);
    await textOf(page, '[data-stage="prepare"] [data-state]', /^2 of 3/);
    await textOf(page, ".batch-list li", /20 of 20 folded/);
  });

  it("is for the reader's own book, steps and table alike", async () => {
    await open(`${PAGE}?leaves=210&thick=25&last=409`);
    await textOf(page, "[data-book]", /In a book of 210 leaves/);
    await textOf(page, '[data-stage="prepare"] .steps', /pattern is for 210 leaves/);
    const home = await page.$eval("[data-home]", (one) => (one as HTMLAnchorElement).href);
    expect(new URL(home).searchParams.get("leaves")).toBe("210");
  });

  it("says why there is nothing to make where the book does not carry the kit", async () => {
    await visit(site, page, `${PAGE}?height=60`);
    await page.waitForSelector("[data-wait]:not([hidden])");
    expect(await page.$eval(".chapters", (one) => (one as HTMLElement).hidden)).toBe(true);
  });

  // Source: axe-core's rules after WCAG 2, an independent checker.
  it.each([390, 1280])("axe finds nothing with a stage and a table open, at %d px", async (width) => {
    await page.setViewport({ width, height: 900 });
    await open();
    await press('[data-stage="fold"] > summary');
    await page.waitForSelector(".batch-list");
    await press('[data-batch="1"] > summary');
    await press("[data-supplies] > summary");
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document);
      return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 120)).join(" | ")}`);
    });
    expect(found).toEqual([]);
  });
});
