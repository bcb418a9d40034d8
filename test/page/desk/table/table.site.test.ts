import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { placePicture } from "../../../../src/core/makeability/picture-place.ts";
import { faceOf, layOutPicture } from "../../../../src/core/pattern/face.ts";
import { seenLayer, sheetArea } from "../../../../src/output/drawing/desk/sheet.ts";
import { readKit } from "../../../input/kit/kit-folders.ts";
import { sharedBrowser } from "../../../site/shared-site.ts";
import { atRest, drag, FILE, type LaidKit, layOutKit, REMARKED, tabTo, told } from "./laid-kit.ts";

/** Outlines of all that will be seen, as the sheet shows it. */
function seenOn(page: Page): Promise<string[]> {
  return page.$$eval('[data-sheet] [data-layer="seen"] path', (paths) => paths.map((path) => path.getAttribute("d")!));
}

/** The same of the kit in the folder, by the reader and the computation of a build. */
function seenOf(laid: LaidKit): string[] {
  const { kit, pattern } = readKit(join(laid.project.folder, "content/kits/harbour-moon"), laid.project.folder);
  const layout = layOutPicture(kit);
  if ("failure" in layout) throw new Error(layout.failure.kind);
  const place = placePicture(kit, faceOf(kit, layout.value));
  return [...seenLayer(pattern, place, sheetArea(kit, place)).matchAll(/ d="([^"]+)"/g)].map(([, d]) => d!);
}

function lines(text: string): string[] {
  return text.split("\n");
}

let browser: Browser;
let laid: LaidKit;
beforeAll(async () => {
  browser = await sharedBrowser();
  laid = await layOutKit(browser);
});
afterAll(async () => {
  await laid?.close();
  await browser.disconnect();
});

describe("a kit on the desk", () => {
  // A sum of layout shifts up to 0.1 is good: Core Web Vitals, https://web.dev/articles/cls (from memory).
  it("comes to lie without moving about", async () => {
    const moved = await laid.page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) =>
            resolve(list.getEntries().reduce((sum, entry) => sum + (entry as unknown as { value: number }).value, 0)),
          ).observe({ type: "layout-shift", buffered: true });
          setTimeout(() => resolve(0), 2000);
        }),
    );
    expect(moved).toBeLessThan(0.1);
    expect(await laid.page.$eval(".table-things", (things) => getComputedStyle(things).visibility)).toBe("visible");
  });
});

describe("a kit on the desk, with the mouse alone", () => {
  it("is changed by dragging and pressing, and shows each change at once", async () => {
    const { page } = laid;
    await drag(page, '[data-handle="height"]', 0, -40);
    expect(await told(page)).toBe("One change, not written yet");
    const height = await page.$eval('[data-handle="height"]', (one) => one.getAttribute("aria-valuetext")!);
    expect(Number.parseFloat(height)).toBeLessThan(125);
    await drag(page, '[data-handle="depth2"]', -20, 0);
    expect(await told(page)).toBe("2 changes, not written yet");
    await atRest(page);
    const sheet = (await (await page.$("[data-sheet] svg"))!.boundingBox())!;
    await page.mouse.click(sheet.x + 0.5 * sheet.width, sheet.y + 0.5 * sheet.height);
    expect(
      await page.$eval("#desk-shape", (one) => (one as HTMLSelectElement).selectedOptions[0]!.textContent),
    ).toMatch(/ · /);
    await page.select("#desk-shape", "1");
    await page.click('input[name="shape-level"][value="rim"]');
    await atRest(page);
    expect(await told(page)).toBe("3 changes, not written yet");
    expect(laid.text()).toBe(REMARKED);
  });

  it("takes a way out with a press", async () => {
    const { page } = laid;
    const before = await page.$eval(".finding", (one) => one.textContent);
    await page.click(".way");
    await atRest(page);
    expect(await told(page)).toBe("4 changes, not written yet");
    expect(await page.$eval(".finding", (one) => one.textContent)).not.toBe(before);
  });

  it("writes what the desk showed, after it showed the difference, and leaves all else as it was", async () => {
    const { page } = laid;
    const shown = await seenOn(page);
    await page.click("[data-write]");
    const listed = await page.$$eval(".difference-lines .come", (all) => all.map((one) => one.textContent!.slice(2)));
    await page.click("[data-write-now]");
    await page.waitForFunction(() => document.querySelector("[data-told]")!.textContent!.startsWith("Written"));
    const [was, is] = [lines(REMARKED), lines(laid.text())];
    expect(is.length).toBe(was.length);
    expect(is.filter((line, i) => line !== was[i])).toEqual(listed);
    expect(laid.text()).toContain("# the one in the cupboard");
    expect(laid.text()).toContain("# not less");
    await atRest(page);
    expect(await seenOn(page)).toEqual(shown);
    expect(seenOf(laid)).toEqual(shown);
    await page.click("[data-undo]");
    expect(await told(page)).toBe("One change, not written yet");
  });

  it("threw nothing", () => expect(laid.errors).toEqual([]));
});

describe("a kit on the desk, with the keyboard alone", () => {
  beforeAll(() => laid.again());

  it("is changed by handles, fields and lists", async () => {
    const { page } = laid;
    await tabTo(page, '[data-handle="head"]');
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    expect(await page.$eval('[data-handle="head"]', (one) => one.getAttribute("aria-valuetext"))).toBe("42\u00a0mm");
    await tabTo(page, '[data-handle="leaf"]');
    await page.keyboard.press("PageUp");
    await tabTo(page, "#desk-shape");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await tabTo(page, 'input[name="shape-level"]');
    await page.keyboard.press("ArrowUp");
    await atRest(page);
    await tabTo(page, '[data-handle="depth1"]');
    await page.keyboard.press("ArrowLeft");
    await tabTo(page, '[data-field="light-diameter"]');
    await page.keyboard.press("ArrowDown");
    await tabTo(page, '[data-motif="1"]');
    await page.keyboard.press("ArrowRight");
    await tabTo(page, '[data-field="motif-width"]');
    await page.keyboard.press("ArrowUp");
    await atRest(page);
    expect(await told(page)).toMatch(/^\d changes, not written yet$/);
  });

  it("is undone and done again by keys", async () => {
    const { page } = laid;
    const before = await told(page);
    await page.keyboard.down("Control");
    await page.keyboard.press("z");
    expect(await told(page)).not.toBe(before);
    await page.keyboard.press("y");
    await page.keyboard.up("Control");
    expect(await told(page)).toBe(before);
  });

  it("is written by keys, and the folder makes the very picture", async () => {
    const { page } = laid;
    await atRest(page);
    const shown = await seenOn(page);
    await page.keyboard.down("Control");
    await page.keyboard.press("s");
    await page.keyboard.up("Control");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.querySelector("[data-told]")!.textContent!.startsWith("Written"));
    expect(laid.text()).toContain("  # Room for the moon's light above it.\n  head: 42   # not less\n");
    expect(seenOf(laid)).toEqual(shown);
  });

  it("threw nothing", () => expect(laid.errors).toEqual([]));
});

describe("a kit on the desk and others who change it", () => {
  beforeAll(() => laid.again());

  it("shows what an editor wrote", async () => {
    const { page } = laid;
    laid.write(REMARKED.replace("height: 130", "height: 120"));
    await page.waitForFunction(
      () => document.querySelector('[data-handle="height"]')!.getAttribute("aria-valuenow") === "120",
    );
    expect(await told(page)).toBe("Nothing to write");
  });

  it("loses neither where both changed it, and puts both together", async () => {
    const { page } = laid;
    await page.focus('[data-handle="head"]');
    await page.keyboard.press("ArrowDown");
    laid.write(REMARKED.replace("height: 130", "height: 110"));
    await page.waitForSelector('[data-news-do="merge"]');
    await page.click('[data-news-do="merge"]');
    await atRest(page);
    const figures = await page.$$eval('[data-handle="head"], [data-handle="height"]', (all) =>
      all.map((one) => one.getAttribute("aria-valuenow")),
    );
    expect(figures).toEqual(["41", "110"]);
  });

  it("tells of a text that cannot be read, with its place, and keeps the last good piece in sight", async () => {
    const { page } = laid;
    const shown = await seenOn(page);
    laid.write(REMARKED.replace("head: 40", "head: forty"));
    await page.waitForSelector('[data-news-do="take"]');
    await page.click('[data-news-do="take"]');
    await page.waitForSelector('[data-news-do="open"]');
    const line = lines(REMARKED).findIndex((one) => one.includes("head: 40")) + 1;
    expect(await page.$eval('[data-news-do="open"]', (one) => one.textContent)).toBe(`Open ${FILE}:${line}`);
    expect(await page.$eval(".news li", (one) => one.textContent)).toContain("fit.head");
    expect(await seenOn(page)).toEqual(shown);
  });

  it("is a draft when that is switched on", async () => {
    const { page } = laid;
    laid.write(REMARKED);
    await page.waitForFunction(() => !document.querySelector(".news"));
    await page.click("[data-draft]");
    await page.click("[data-write]");
    await page.click("[data-write-now]");
    await page.waitForFunction(() => document.querySelector("[data-told]")!.textContent!.startsWith("Written"));
    expect(laid.text()).toContain("draft: true");
  });

  it.each([
    ["light", 1280],
    ["dark", 1280],
    ["light", 390],
    ["dark", 390],
  ] as const)("has nothing against it in %s, %i wide", async (look, width) => {
    const { page } = laid;
    await page.setViewport({ width, height: 900 });
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: look }]);
    await atRest(page);
    await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
    const found = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
    });
    expect(found).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
});
