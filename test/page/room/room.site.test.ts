import axe from "axe-core";
import type { Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { newReader, textOf, visit } from "../../site/visit.ts";

const ROOM = "private/classes/winter-evenings/room/index.html";

describe("the page for the room", () => {
  let site: OpenedSite;
  let page: Page;
  beforeAll(async () => {
    site = await openSite();
    ({ page } = await newReader(site));
    await page.setViewport({ width: 1280, height: 720 });
    await visit(site, page, ROOM);
  });
  afterAll(() => site?.close());

  const shown = () => page.$$eval("[data-shown]", (all) => all.findIndex((one) => one.checkVisibility()));
  const value = (selector: string) => page.$eval(selector, (one) => (one as HTMLInputElement).value);

  it("shows one step at a time, on and back by button and by the keys of a clicker", async () => {
    expect(await shown()).toBe(0);
    await page.click("[data-next]");
    expect(await shown()).toBe(1);
    await page.keyboard.press("PageDown");
    expect(await shown()).toBe(2);
    await page.keyboard.press("ArrowLeft");
    await page.click("[data-previous]");
    await page.click("[data-previous]");
    expect(await shown()).toBe(0);
  });

  // Rule of thumb for projected text: a line of at least a thirtieth of the picture's height (common practice, no source).
  it("is big enough for the last row", async () => {
    for (const selector of ["[data-now] p:not(.over)", ".targets", "[data-stretch]"])
      expect(
        await page.$eval(selector, (one) => Number.parseFloat(getComputedStyle(one).fontSize)),
        selector,
      ).toBeGreaterThanOrEqual(720 / 30);
  });

  it("tells where a session stands that begins now, and the targets that count", async () => {
    await page.select('[name="session"]', "1");
    await page.click("[data-begin]");
    expect(await textOf(page, "[data-stretch]", /until/)).toMatch(/: \d+ min left$/);
    expect(
      await page.$$eval("[data-target].now", (all) => all.map((one) => (one as HTMLElement).dataset["target"])),
    ).toEqual(["1-pause"]);
    expect(await page.$$eval("[data-target].now li", (all) => all.length)).toBe(7);
  });

  it("counts a timer down, and stops it", async () => {
    await page.click("[data-timer]");
    expect(await textOf(page, ".timer", /:/)).toMatch(/^(10:00|9:5\d)$/);
    await page.click("[data-timer]");
    expect(await page.$eval(".timer", (one) => one.textContent)).toBe("");
  });

  it("keeps who is here and how far each seat is, by seat numbers, on this device", async () => {
    const row = '[data-seat="3"]';
    await page.click(`${row} [name="here-1"]`);
    await page.type(`${row} [name="page"]`, "87");
    await page.click('[data-seat="4"] [name="finished"]');
    const rest = await textOf(page, `${row} [data-rest]`, /from page 89 on/);
    expect(await textOf(page, "[data-sum]")).toMatch(/^One seat is here; one is finished\./);
    await page.reload();
    expect(await value(`${row} [name="page"]`)).toBe("87");
    expect(await page.$eval(`${row} [name="here-1"]`, (one) => (one as HTMLInputElement).checked)).toBe(true);
    expect(await textOf(page, `${row} [data-rest]`)).toBe(rest);
    expect(await page.evaluate(() => Object.keys(localStorage))).toEqual(["leaflight-room-winter-evenings"]);
    expect(await textOf(page, '[data-slip="3"] [data-done]')).toBe("87");
    expect(await textOf(page, '[data-slip="3"] [data-rest]')).toBe(rest);
    expect(await page.$('[data-slip="1"] [data-done] .line')).not.toBeNull();
  });

  it("prints the slips and nothing else", async () => {
    await page.emulateMediaType("print");
    const seen = await page.$$eval("main > *, .top, .slip", (all) =>
      all.filter((one) => one.checkVisibility()).map((one) => one.className),
    );
    expect(new Set(seen)).toEqual(new Set(["take-home", "slip"]));
    await page.emulateMediaType("screen");
  });

  it("reads what cannot be kept notes as none", async () => {
    for (const kept of ["{", "null", "[1]", '{"3":{"here":"x","page":"1e9","finished":1},"x":{}}', '{"3":null}']) {
      await page.evaluate((text) => localStorage.setItem("leaflight-room-winter-evenings", text), kept);
      await page.reload();
      expect(await value('[data-seat="3"] [name="page"]'), kept).toBe("");
    }
  });

  it.each([1280, 390])("has nothing that axe finds, and nothing sideways, at %d px", async (width) => {
    await page.setViewport({ width, height: 844 });
    await page.evaluate(axe.source);
    const { violations } = await page.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run());
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
});
