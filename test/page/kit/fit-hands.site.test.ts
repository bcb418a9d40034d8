import type { BrowserContext, Page } from "puppeteer";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newDevice, type OpenedSite, openSite } from "../../site/shared-site.ts";
import { settled, textOf, visit } from "../../site/visit.ts";

let site: OpenedSite;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());
beforeEach(async () => {
  context = await newDevice(site.browser);
  page = await context.newPage();
  await page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true });
});
afterEach(() => context.close());

const GULL = "kits/little-gull/index.html";
const STATE = "[data-refit-state]";

describe("the fit panel under a reader's hands", () => {
  it("keeps the focus at the answer when an offer is taken by keyboard", async () => {
    await visit(site, page, `${GULL}?height=90`);
    await page.waitForSelector(`${STATE} li button`);
    await page.focus(`${STATE} li button`);
    await page.keyboard.press("Enter");
    await textOf(page, STATE, /for your book/);
    await settled(page);
    expect(await page.evaluate(() => document.activeElement?.matches("[data-refit-state]"))).toBe(true);
  });

  it("takes an emptied field for the kit's own figure, shows it in grey, and keeps the rest", async () => {
    await visit(site, page, `${GULL}?height=190&thick=15`);
    await textOf(page, STATE, /for your book/);
    await page.$eval("#fit-leafHeight", (field) => (field as HTMLInputElement).select());
    await page.keyboard.press("Backspace");
    await page.waitForFunction(() => !location.search.includes("height"));
    expect(await page.evaluate(() => location.search)).toBe("?thick=15");
    const shown = await page.$eval("#fit-leafHeight", (field) => {
      const { value, placeholder, defaultValue } = field as HTMLInputElement;
      return { value, invalid: field.hasAttribute("aria-invalid"), same: placeholder === `kit’s: ${defaultValue}` };
    });
    expect(shown).toEqual({ value: "", invalid: false, same: true });
  });

  it("leads to packet and bench in the units that were chosen, and back to the kit's own packet", async () => {
    await visit(site, page, GULL);
    await page.click("#units-in");
    await page.waitForFunction(() => document.querySelector<HTMLElement>("[data-own-packets]")?.hidden);
    const mine = await page.$eval("[data-my-packet] a", (link) => link.getAttribute("href")!);
    expect(mine).toBe("packet/index.html?units=in");
    await visit(site, page, "kits/little-gull/packet/index.html?units=in");
    await page.waitForFunction(() => document.querySelector(".figures")?.textContent?.includes("\u00a0in"));
    await visit(site, page, GULL);
    await page.waitForFunction(() => document.querySelector<HTMLElement>("[data-own-packets]")?.hidden);
    await page.click("#units-mm");
    await page.waitForFunction(() => !document.querySelector<HTMLElement>("[data-own-packets]")?.hidden);
  });

  it("has controls as large as a finger, with a ring of three pixels where the keyboard is", async () => {
    for (const path of [GULL, "index.html"]) {
      await visit(site, page, path);
      const small = await page.evaluate(() => {
        for (const details of document.querySelectorAll("details")) details.open = true;
        const controls = document.querySelectorAll<HTMLElement>(
          ":is([data-refit-panel], [data-finder], .top, .hero .units) :is(a, button, input, select, summary)",
        );
        return [...controls]
          .map((one) => one.closest<HTMLElement>("label:has(input)") ?? one)
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 43.9)
          .map((one) => one.outerHTML.slice(0, 90));
      });
      expect(small, path).toEqual([]);
    }
    await page.focus("[data-finder] select");
    await page.keyboard.press("Tab");
    const ring = await page.evaluate(() => getComputedStyle(document.activeElement!).outlineWidth);
    expect(ring).toBe("3px");
  });
});
