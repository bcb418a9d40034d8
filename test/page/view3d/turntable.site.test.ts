import { join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import { PNG } from "pngjs";
import puppeteer, { type Browser, type Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../../src/build/browser/find-browser.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { settled } from "../../site/visit.ts";

const KIT = "kits/harbour-moon/index.html";
/** A kit with little to draw: enough to see that the view opens. */
const LIGHT_KIT = "kits/little-gull/index.html";

/** Draws by software, so that a machine without a graphics card gives the same view. */
const FLAGS = [
  "--no-sandbox",
  "--use-gl=angle",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--ignore-gpu-blocklist",
  "--hide-scrollbars",
];

let site: OpenedSite;
let browser: Browser;

beforeAll(async () => {
  site = await openSite();
  const { path, source } = await findBrowser();
  browser = await puppeteer.launch({
    executablePath: path,
    args: FLAGS,
    headless: source === "packaged" ? "shell" : true,
  });
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
});

interface Shown {
  readonly page: Page;
  readonly errors: string[];
}

async function visit(options: { width?: number; address?: string; before?: () => void } = {}): Promise<Shown> {
  const page = await browser.newPage();
  // A busy machine draws slowly by software.
  page.setDefaultTimeout(120_000);
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  // Drawing by software takes as long as the view has pixels.
  await page.setViewport({ width: options.width ?? 400, height: 480 });
  await page.emulateMediaFeatures([{ name: "prefers-reduced-motion", value: "reduce" }]);
  if (options.before) await page.evaluateOnNewDocument(options.before);
  await page.goto(options.address ?? `${site.host.site}${KIT}`, { waitUntil: "load" });
  return { page, errors };
}

async function press(page: Page): Promise<void> {
  await page.$eval("[data-round-open]", (button) => (button as HTMLButtonElement).click());
}

async function opened(options: Parameters<typeof visit>[0] = {}): Promise<Shown> {
  const shown = await visit(options);
  await press(shown.page);
  await shown.page.waitForSelector("#round canvas");
  await drawn(shown.page);
  return shown;
}

/** Waits until two frames have been drawn. */
async function drawn(page: Page): Promise<void> {
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve(undefined)))),
  );
}

async function picture(page: Page): Promise<PNG> {
  await drawn(page);
  return PNG.sync.read(Buffer.from(await (await page.$("#round canvas"))!.screenshot()));
}

/** Pixels of a picture as numbers, every third. */
function pixels(png: PNG): number[] {
  return Array.from({ length: Math.floor((png.width * png.height) / 3) }, (_, i) => png.data.readUInt32BE(12 * i));
}

/** Share of pixels that differ by more than the one step in 255 to which the page's own gradient is dithered from shot to shot. */
function difference(a: PNG, b: PNG): number {
  expect([a.width, a.height]).toEqual([b.width, b.height]);
  let differing = 0;
  for (let at = 0; at < a.data.length; at += 4) {
    if ([0, 1, 2].some((channel) => Math.abs(a.data[at + channel]! - b.data[at + channel]!) > 1)) differing += 1;
  }
  return differing / (a.width * a.height);
}

/** What is seen: one of the two unit systems is hidden. */
const text = (page: Page, selector: string) => page.$eval(selector, (element) => (element as HTMLElement).innerText);

async function set(page: Page, name: string, value: string | boolean): Promise<void> {
  await page.$eval(
    `[data-round-${name}]`,
    (element, wanted) => {
      const input = element as HTMLInputElement;
      if (typeof wanted === "boolean") {
        if (input.checked !== wanted) input.click();
      } else {
        input.value = wanted;
        input.dispatchEvent(new Event("input", { bubbles: true }));
      }
    },
    value,
  );
}

describe("the turning view", () => {
  it("fetches nothing of it before the button is pressed, the worker's store included", async () => {
    site.host.asked.length = 0;
    const { page, errors } = await visit({ address: site.host.site + LIGHT_KIT });
    await page.waitForNetworkIdle({ idleTime: 1500 });
    expect(site.host.asked).toContain("assets/scripts/turn-round.js");
    expect(site.host.asked).not.toContain("assets/scripts/round-view.js");
    await press(page);
    await page.waitForSelector("#round canvas");
    expect(site.host.asked).toContain("assets/scripts/round-view.js");
    expect(errors).toEqual([]);
    await page.close();
  });

  it("shows the reader's own book when the page does", async () => {
    const { page } = await opened();
    const own = await page.$eval("[data-round-shape]", (element) => element.textContent);
    await page.$eval("#fit-leafWidth", (element) => {
      const input = element as HTMLInputElement;
      input.value = "150";
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
    await page.waitForFunction(
      (before) => document.querySelector("[data-round-shape]")?.textContent !== before,
      {},
      own,
    );
    expect(await page.$$eval("#round canvas", (all) => all.length)).toBe(1);
    expect(await text(page, "[data-round-shape]")).toContain("its true shape");
    await page.close();
  });

  it("closes, gives the room back and opens again", async () => {
    const { page, errors } = await visit({ address: site.host.site + LIGHT_KIT });
    const words = await page.$eval("[data-round-open]", (button) => button.textContent);
    await press(page);
    await page.waitForSelector("#round canvas");
    expect(await text(page, "[data-round-open]")).toBe("Close the view");
    await press(page);
    expect(await page.$("#round canvas")).toBeNull();
    expect(await text(page, "[data-round-open]")).toBe(words);
    await press(page);
    await page.waitForSelector("#round canvas");
    expect(new Set(pixels(await picture(page))).size).toBeGreaterThan(500);
    expect(errors).toEqual([]);
    await page.close();
  });

  // WCAG 2.2: 1.4.10 Reflow at 320 CSS pixels; 2.5.8 Target Size (Minimum), 24 by 24.
  it("fits a page of 320 px with targets of at least 24 px", async () => {
    const { page } = await opened({ width: 320 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    const small = await page.$$eval("#round button, #round label", (all) =>
      all
        .map((one) => ({ words: one.textContent?.trim(), box: one.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
        .map(({ words }) => words),
    );
    expect(small).toEqual([]);
    await page.close();
  });

  it("opens from the disk too", async () => {
    const address = pathToFileURL(join(site.dist, LIGHT_KIT)).href;
    const { page } = await opened({ address });
    expect(new Set(pixels(await picture(page))).size).toBeGreaterThan(500);
    await page.close();
  });

  it("leaves light and window out of a kit without them, and folds its corners where the reader does", async () => {
    const { page } = await opened({ address: site.host.site + LIGHT_KIT });
    for (const name of ["light", "door", "window"]) expect(await page.$(`[data-round-${name}]`)).toBeNull();
    const cut = await picture(page);
    await page.close();
    const folded = await visit({ address: `${site.host.site + LIGHT_KIT}?folds=corner` });
    // Pressed before the page has worked the book out: the view follows.
    await press(folded.page);
    await folded.page.waitForSelector("main.by-corners");
    await folded.page.waitForSelector("#round canvas");
    await settled(folded.page);
    expect(difference(cut, await picture(folded.page))).toBeGreaterThan(0.05);
    expect(await text(folded.page, "[data-round-text]")).toContain("every leaf with its folded corners");
    await folded.page.close();
  });

  it("says that WebGL is missing, fetches nothing and keeps the front picture", async () => {
    site.host.asked.length = 0;
    const { page } = await visit({
      before: () => {
        HTMLCanvasElement.prototype.getContext = () => null;
      },
    });
    await press(page);
    await page.waitForFunction(() => document.querySelector("[data-round-status]")!.textContent !== "");
    expect(await text(page, "[data-round-status]")).toMatch(/cannot draw in three dimensions.*front picture above/);
    expect(await page.$("#round canvas")).toBeNull();
    expect(site.host.asked).not.toContain("assets/scripts/round-view.js");
    expect(await page.$eval(".hero-picture img", (image) => (image as HTMLImageElement).naturalWidth)).toBeGreaterThan(
      0,
    );
    await page.close();
  });

  it("says so when the view cannot be fetched, and tries again", async () => {
    const { page } = await visit({ address: site.host.site + LIGHT_KIT });
    await page.setBypassServiceWorker(true);
    await page.setRequestInterception(true);
    let broken = true;
    page.on("request", (request) => {
      if (broken && request.url().endsWith("round-view.js")) request.abort();
      else request.continue();
    });
    await page.reload({ waitUntil: "load" });
    await press(page);
    await page.waitForFunction(() =>
      document.querySelector("[data-round-status]")!.textContent!.includes("could not be loaded"),
    );
    broken = false;
    await press(page);
    await page.waitForSelector("#round canvas");
    await page.close();
  });
});

describe("the turning view of one page", () => {
  let page: Page;
  let errors: string[];
  beforeAll(async () => {
    ({ page, errors } = await opened());
  });
  afterAll(() => page.close());

  it("draws the book, and axe finds nothing in it", async () => {
    expect(new Set(pixels(await picture(page))).size).toBeGreaterThan(500);
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run("#round");
      return violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 100)).join(" | ")}`);
    });
    expect(found).toEqual([]);
    expect(errors).toEqual([]);
  });

  it("turns by dragging", async () => {
    await page.$eval("#round canvas", (canvas) => canvas.scrollIntoView({ block: "center", behavior: "instant" }));
    const box = (await (await page.$("#round canvas"))!.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + 100);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 90, box.y + 100, { steps: 5 });
    await page.mouse.up();
    expect(await text(page, "[data-round-orbit]")).toContain("65° to the left");
  });

  it("turns, tilts and zooms by keys, and 0 resets to the front", async () => {
    await page.focus("#round canvas");
    await page.keyboard.press("0");
    expect(await text(page, "[data-round-orbit]")).toBe("Seen from the front.");
    const front = await picture(page);
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowUp");
    expect(await text(page, "[data-round-orbit]")).toBe("Seen from 10° to the right, 10° above.");
    expect(difference(front, await picture(page))).toBeGreaterThan(0.1);
    await page.keyboard.press("+");
    expect(await text(page, "[data-round-orbit]")).toContain("at 115%");
    await page.keyboard.press("0");
    expect(difference(front, await picture(page))).toBeLessThan(0.001);
  });

  it("says what the opening does, and goes back to the kit's own", async () => {
    const own = await text(page, "[data-round-shape]");
    expect(own).toContain("its true shape");
    const before = await picture(page);
    await set(page, "opening", "120");
    expect(await text(page, "[data-round-shape]")).toMatch(
      /Opening 120°\. The picture is [\d.]+\s+mm wide, \d+% wider/,
    );
    expect(difference(before, await picture(page))).toBeGreaterThan(0.05);
    await set(page, "opening", "30");
    expect(await text(page, "[data-round-shape]")).toContain("narrower than true");
    await page.$eval("[data-round-own]", (button) => (button as HTMLButtonElement).click());
    expect(await text(page, "[data-round-shape]")).toBe(own);
  });

  it("shows light, door and levels, with a legend of names", async () => {
    let before = await picture(page);
    for (const [name, value] of [
      ["light", true],
      ["door", "90"],
      ["levels", true],
    ] as const) {
      await set(page, name, value);
      const after = await picture(page);
      expect(difference(before, after), name).toBeGreaterThan(0.02);
      before = after;
    }
    expect((await text(page, "[data-round-legend]")).split("\n")).toEqual(["1 rim", "2 wall", "3 well"]);
  });
});
