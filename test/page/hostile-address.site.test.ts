import type { Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenedSite, openSite } from "../site/shared-site.ts";
import { newReader, settled, visit } from "../site/visit.ts";
import { timeTurns } from "./turns.ts";

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

/** Harbour Moon states its height, has three levels and a light: of the figures in an address it has no field for the opening alone. */
const MOON = "kits/harbour-moon/";
const OF_KIT = [
  ...[
    "height",
    "width",
    "thick",
    "leaves",
    "page-one",
    "last",
    "plates",
    "read",
    "border",
    "head",
    "picture",
    "depths",
  ],
  ...["units", "step", "folds", "light-wide", "light-high", "bulk", "lost"],
];
const OF_FINDER = [...OF_KIT.slice(0, 8), "hours", "levels", "light", "fit", "sort"];

/** Each kind of page that reads an address, what it asks for, and where it tells what it ignores. */
const KINDS = [
  { page: `${MOON}index.html`, names: OF_KIT, told: "[data-refit-state] p" },
  { page: `${MOON}bench/index.html`, names: OF_KIT, told: ".notice" },
  { page: `${MOON}packet/index.html`, names: OF_KIT, told: "[data-print-bar] p" },
  { page: `${MOON}packet/large.html`, names: OF_KIT, told: "[data-print-bar] p" },
  { page: "index.html", names: OF_FINDER, told: "[data-finder-result] p" },
];

/** What stands as the value of every name, and which names may have it all the same; told by hand. */
const VALUES = [
  { value: "99999", sensible: [] },
  { value: "0", sensible: ["head", "bulk"] },
  { value: "-1", sensible: [] },
  { value: "1e308", sensible: [] },
  { value: "0x10", sensible: [] },
  { value: "0.0000001", sensible: ["head", "bulk"] },
  { value: "", sensible: ["plates", "lost"] },
  { value: "NaN", sensible: [] },
  // Hosts take some 16,000 characters of an address.
  { value: "9".repeat(700), sensible: [] },
  { value: "٣", sensible: [] },
  { value: "%zz%", sensible: [] },
  { value: "<img src=x onerror=window.broken=1>", sensible: [] },
  { value: "%3Csvg%20onload=window.broken=1%3E", sensible: [] },
  { value: "%00%E2%80%AEabc%0A", sensible: [] },
  { value: "12&__proto__=1&constructor=2&utm_source=3", sensible: ["head", "bulk", "lost", "hours"] },
];

/** Sentences that a page tells in a place, once they are there. */
async function ignoredBy(page: Page, place: string): Promise<string[]> {
  await settled(page);
  const all = await page.$$eval(place, (lines) => lines.map((line) => line.textContent!));
  return all.filter((words) => words.includes("cannot be used and is ignored"));
}

async function open(
  path: string,
  before?: () => void,
): Promise<{ page: Page; wrong: string[]; close: () => Promise<void> }> {
  const { context, page } = await newReader(site);
  const wrong: string[] = [];
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  if (before) await page.evaluateOnNewDocument(before);
  await visit(site, page, path);
  return { page, wrong, close: () => context.close() };
}

describe.each(KINDS)("$page with a hostile address", ({ page: path, names, told }) => {
  it.each(VALUES)("tells each figure that it ignores, once: $value", async ({ value, sensible }) => {
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

/** A second, in turns of the loop below: a turn takes about 4 ms on a machine of 2025. */
const SECOND = 250;

describe("the longest that a page works at a stretch", () => {
  it.each(
    [
      "leaves=3000&thick=200",
      "leaves=3000&width=30",
      "leaves=3000&last=6000&thick=200&height=600&width=500&picture=100&step=0.1&head=0&light-wide=150&light-high=300",
      "height=600&picture=590&head=0&step=0.1",
      "leaves=3000&border=1000_1000",
    ].flatMap((address) => KINDS.map(({ page }) => [`${page}?${address}`])),
    // Other programs make a task longer, too: a page that works too long does so each time.
  )("is less than a second at the ends of the bounds: %s", { retry: 2 }, async (path) => {
    const { page, wrong, close } = await open(path, watchTasks);
    const turns = await page.evaluate(timeTurns);
    await settled(page);
    turns.push(...(await page.evaluate(timeTurns)));
    const longest = await page.evaluate(() => Math.max(0, ...(window as unknown as { tasks: number[] }).tasks));
    expect(longest).toBeLessThan(SECOND * turns.toSorted((a, b) => a - b)[turns.length >> 1]!);
    expect(wrong).toEqual([]);
    await close();
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

/** Runs in the page: how long each task took that held it up for 50 ms or more, ms. */
function watchTasks(): void {
  const tasks: number[] = [];
  Object.assign(window, { tasks });
  new PerformanceObserver((list) => tasks.push(...list.getEntries().map((entry) => entry.duration))).observe({
    type: "longtask",
    buffered: true,
  });
}
