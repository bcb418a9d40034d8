import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { OF_FINDER, OF_KIT, VALUES } from "../hostile/addresses.ts";
import { openBrowser } from "../site/open-browser.ts";
import { type OpenedSite, openSite } from "../site/shared-site.ts";
import { newReader, settled, visit } from "../site/visit.ts";
import { longestTask } from "./longest-task.ts";

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

const MOON = "kits/harbour-moon/";

/** Each kind of page that reads an address, what it asks for, and where it tells what it ignores. */
const KINDS = [
  { page: `${MOON}index.html`, names: OF_KIT, told: "[data-refit-state] p" },
  { page: `${MOON}bench/index.html`, names: OF_KIT, told: ".notice" },
  { page: `${MOON}packet/index.html`, names: OF_KIT, told: "[data-print-bar] p" },
  { page: `${MOON}packet/large.html`, names: OF_KIT, told: "[data-print-bar] p" },
  { page: "index.html", names: OF_FINDER, told: "[data-finder-result] p" },
];

/** Of all hostile values those that a browser could make more of than the reader of addresses does, which is asked all. */
const IN_A_BROWSER = VALUES.filter(({ value }) => /^9{20}|<|%0|__/.test(value));

/** Sentences that a page tells in a place, once they are there. */
async function ignoredBy(page: Page, place: string): Promise<string[]> {
  await settled(page);
  const all = await page.$$eval(place, (lines) => lines.map((line) => line.textContent!));
  return all.filter((words) => words.includes("cannot be used and is ignored"));
}

/** What a page threw or complained of, as it comes. */
function wrongOf(page: Page): string[] {
  const wrong: string[] = [];
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  return wrong;
}

async function open(
  path: string,
  before?: () => void,
): Promise<{ page: Page; wrong: string[]; close: () => Promise<void> }> {
  const { context, page } = await newReader(site);
  const wrong = wrongOf(page);
  if (before) await page.evaluateOnNewDocument(before);
  await visit(site, page, path);
  return { page, wrong, close: () => context.close() };
}

describe.each(KINDS)("$page with a hostile address", ({ page: path, names, told }) => {
  it.each(IN_A_BROWSER)("tells each figure that it ignores, once: $value", async ({ value, sensible }) => {
    const { page, wrong, close } = await open(`${path}?${names.map((name) => `${name}=${value}`).join("&")}`);
    const ignored = await ignoredBy(page, told);
    const left = names.filter((name) => !(sensible as readonly string[]).includes(name));
    // 12 is also a thickness, a height of the picture, a depth of a third level …: only that nothing breaks is looked at.
    if (!value.includes("&")) expect(ignored.length).toBe(left.length);
    expect(new Set(ignored).size).toBe(ignored.length);
    for (const words of ignored) expect(words.length).toBeLessThan(250);
    expect(await page.evaluate(() => "broken" in window || document.querySelector("[onload], [onerror]"))).toBeFalsy();
    expect(wrong).toEqual([]);
    await close();
  });
});

/** A second of the page's own work, ms. */
const SECOND = 1000;

/** The most leaves with the most marks on each, and the most unfolded ones: every page is asked for these, a kit's page for others, too. */
const HARDEST = [
  "leaves=3000&last=6000&thick=200&height=600&width=500&picture=100&step=0.1&head=0&light-wide=150&light-high=300",
  "leaves=3000&border=1000_1000",
];

describe("the longest that a page works at a stretch", () => {
  let own: Browser;
  beforeAll(async () => {
    own = await openBrowser();
  });
  afterAll(() => own?.close());

  it.each(
    ["leaves=3000&thick=200", "leaves=3000&width=30", "height=600&picture=590&head=0&step=0.1", ...HARDEST].flatMap(
      (address) => KINDS.slice(0, HARDEST.includes(address) ? undefined : 1).map(({ page }) => `${page}?${address}`),
    ),
  )("is less than a second at the ends of the bounds: %s", async (path) => {
    const { context, page } = await newReader({ browser: own });
    const wrong = wrongOf(page);
    const longest = await longestTask(page, async () => {
      await visit(site, page, path);
      await settled(page);
    });
    expect(longest).toBeGreaterThan(0);
    expect(longest).toBeLessThan(SECOND);
    expect(wrong).toEqual([]);
    await context.close();
  });
});

describe("what a browser keeps", () => {
  it("may be anything: a saved book is read as an address is", async () => {
    const { page, wrong, close } = await open(`${MOON}index.html`, () => {
      localStorage.setItem("leaflight-book", "leaves=99999&thick=0&width=150&picture=1e9&read=%zz<b>");
      localStorage.setItem("leaflight-units", "furlongs");
    });
    await page.click("[data-refit-kept]");
    await page.waitForFunction(() => location.search === "?width=150");
    const ignored = await ignoredBy(page, "[data-refit-state] p");
    expect(ignored.map((words) => words.split(":")[0])).toEqual(["Thickness", "Leaves", "Reading direction"]);
    expect(wrong).toEqual([]);
    await close();
  });

  it.each([
    "",
    "null",
    "[]",
    "{",
    '{"schema":"leaflight/progress/1","kit":"harbour-moon","fit":"","revision":"x","at":1e9,"ticks":[],"passed":[],"lost":[],"clock":{"worked":0,"seen":0,"ticked":0}}',
    '{"schema":"leaflight/progress/1","kit":"harbour-moon","fit":"","revision":"<b>","at":2999,"ticks":[[3000,1e308]],"passed":["x"],"lost":[],"measured":{"thickness":1e308,"leaves":1},"clock":{"worked":1e308,"seen":1e308,"ticked":0}}',
    '{"schema":"leaflight/progress/1","kit":"harbour-moon","fit":"","revision":"<b>","at":4,"item":"step frame","ticks":[],"passed":["score 1 9-1","notch 1e9"],"lost":[],"glued":{"item":"step frame","at":1e308},"clock":{"worked":0,"seen":0,"ticked":0}}',
  ])("may be anything: the bench opens with progress %s", async (kept) => {
    const { context, page } = await newReader(site);
    const wrong: string[] = [];
    page.on("pageerror", (error) => wrong.push(String(error)));
    await page.evaluateOnNewDocument((text) => localStorage.setItem("leaflight-bench/1/harbour-moon/", text), kept);
    await visit(site, page, `${MOON}bench/index.html#%zz<b>`);
    await page.waitForFunction(() => !document.querySelector<HTMLElement>("[data-bench]")!.hidden);
    expect(await page.$eval("[data-bench]", (bench) => bench.textContent)).not.toMatch(/NaN|Infinity|undefined/);
    expect(wrong).toEqual([]);
    await context.close();
  });
});
