import { existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newDevice, type OpenedSite, openSite } from "../../site/shared-site.ts";
import { visit } from "../../site/visit.ts";
import { readPdf } from "../print/read-pdf.ts";

/** Most screens of a phone that a page of a kit is long before something is opened. */
const MOST_SCREENS = 14;

const PHONE = { width: 390, height: 844, isMobile: true, hasTouch: true };
const FILES = ["index.html", "packet/index.html", "packet/large.html", "make/index.html", "bench/index.html"];
const KITS = ["evening-boat", "harbour-moon", "little-gull", "tide-and-lamp"];

let site: OpenedSite;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

async function onPhone(path: string, scripts = true): Promise<Page> {
  const page = await site.device.newPage();
  await page.setJavaScriptEnabled(scripts);
  await page.setViewport(PHONE);
  await visit(site, page, path);
  return page;
}

const isSeen = (page: Page, selector: string): Promise<boolean> => page.$eval(selector, (one) => one.checkVisibility());

describe("the pages of a kit on a phone", () => {
  it("are those of every kit of the site", () => {
    expect(readdirSync(join(site.dist, "kits")).sort()).toEqual(KITS);
    for (const file of FILES) expect(existsSync(join(site.dist, "kits/little-gull", file))).toBe(true);
  });

  it.each(KITS)("are at most so many screens long before something is opened: %s", async (kit) => {
    for (const file of FILES) {
      const page = await onPhone(`kits/${kit}/${file}`);
      const screens = await page.evaluate(() => document.documentElement.scrollHeight / innerHeight);
      expect(screens, file).toBeLessThanOrEqual(MOST_SCREENS);
      await page.close();
    }
  });

  // WCAG 2.2: 1.4.4 Resize Text, to 200%.
  it.each(FILES)("do not scroll sideways where the text is twice as large: %s", async (file) => {
    const page = await onPhone(`kits/harbour-moon/${file}`);
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%", "important"));
    for (const open of [false, true]) {
      await page.$$eval(
        "details",
        (all, wanted) => {
          for (const one of all) one.open = wanted;
        },
        open,
      );
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(PHONE.width);
    }
    await page.close();
  });

  it("show the sheets of a packet that are opened as wide as the phone", async () => {
    const page = await onPhone("kits/little-gull/packet/index.html");
    expect(await isSeen(page, ".true-scale")).toBe(false);
    await page.$$eval("[data-bundle]", (all) => {
      for (const one of all) (one as HTMLDetailsElement).open = true;
    });
    const wide = await page.$eval(".true-scale svg", (svg) => svg.getBoundingClientRect().width);
    expect(wide).toBeGreaterThan(300);
    expect(wide).toBeLessThanOrEqual(PHONE.width);
    await page.close();
  });
});

describe("a chapter of a kit's page", () => {
  it.each([true, false])("opens by a link to it, with scripts and without: %s", async (scripts) => {
    const device = await newDevice(site.browser);
    const page = await device.newPage();
    await page.setJavaScriptEnabled(scripts);
    await visit(site, page, "kits/little-gull/index.html");
    const isOpen = (): Promise<boolean> => isSeen(page, "#pattern table");
    expect(await isOpen()).toBe(false);
    await page.click('.contents a[href="#pattern"]');
    await expect.poll(isOpen).toBe(true);
    expect(await isSeen(page, "#steps ol")).toBe(false);
    await visit(site, page, "kits/harbour-moon/index.html#steps");
    await expect.poll(() => isSeen(page, "#steps ol")).toBe(true);
    await device.close();
  });

  it("says what is in it for the reader's own book", async () => {
    const page = await onPhone("kits/little-gull/index.html?leaves=128&thick=14.2&last=250");
    const gist = (): Promise<string> => page.$eval('[data-part="pattern-gist"]', (one) => one.textContent!);
    await expect.poll(gist, { timeout: 60_000 }).toMatch(/^128 leaves, \d+ cuts$/);
    await page.close();
  });
});

describe("a kit's page that is printed", () => {
  it("has all chapters and no forms", async () => {
    const page = await site.device.newPage();
    await visit(site, page, "kits/little-gull/index.html");
    const folder = mkdtempSync(join(tmpdir(), "leaflight-printed-"));
    await page.pdf({ path: join(folder, "page.pdf") });
    const text = (await readPdf(join(folder, "page.pdf"))).pages.map((one) => one.text).join(" ");
    rmSync(folder, { recursive: true });
    expect(text).toContain("Press the score lines");
    expect(text).toContain("Marks › cuts");
    expect(text).toContain("from the packet of this kit");
    for (const formed of ["Leaf with page 1", "Replace these", "Print my packet", "Units"])
      expect(text).not.toContain(formed);
    // What the reader had closed is closed again.
    expect(await isSeen(page, "#pattern table")).toBe(false);
    await page.close();
  });
});

describe("a packet's page", () => {
  it("says without scripts whose book it shows, and leads back with hers where there are some", async () => {
    const path = "kits/little-gull/packet/index.html";
    const silent = await onPhone(path, false);
    expect(await silent.$eval("header", (one) => (one as HTMLElement).innerText)).toMatch(
      /for the kit’s own book: 112 leaves, 178\s?mm tall, 108\s?mm wide/,
    );
    await silent.close();
    const page = await onPhone(`${path}?leaves=128&thick=14.2&last=250`);
    const home = await page.$eval("[data-home]", (link) => (link as HTMLAnchorElement).href);
    expect(home).toBe(`${site.host.site}kits/little-gull/index.html?leaves=128&thick=14.2&last=250`);
    await page.close();
  });
});
