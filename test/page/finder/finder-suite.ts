import type { Page } from "puppeteer";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { axeFindings } from "../../site/axe.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { newReader, textOf, visit } from "../../site/visit.ts";

/** The finder of the catalogue, in a browser; the built kits are all fixtures. */
export function finderSuite(served: () => OpenedSite): void {
  describe("the finder", () => {
    let page: Page;
    let close: () => Promise<void>;
    beforeEach(async () => {
      const reader = await newReader(served());
      page = reader.page;
      close = () => reader.context.close();
    });
    afterEach(() => close());

    const RESULT = "[data-finder-result]";
    const titles = () =>
      page.$$eval(".card", (cards) =>
        cards.filter((card) => card.checkVisibility()).map((card) => card.querySelector("h3")!.textContent),
      );
    const search = () => page.evaluate(() => location.search);
    const write = async (name: string, text: string) => {
      await page.click(`#find-${name}`, { count: 3 });
      await page.type(`#find-${name}`, text);
    };
    const card = (slug: string) => `[data-kit="${slug}"]`;

    it("is closed at first and leaves the catalogue as it is", async () => {
      await visit(served(), page, "index.html");
      expect(await page.$eval("[data-finder]", (finder) => (finder as HTMLDetailsElement).open)).toBe(false);
      expect(await titles()).toEqual(["Evening Boat", "Harbour Moon", "Little Gull", "Tide and Lamp"]);
      expect(await search()).toBe("");
    });

    it("is not there without JavaScript, and the catalogue is", async () => {
      await page.setJavaScriptEnabled(false);
      await visit(served(), page, "index.html");
      const shown = await page.$$eval("[data-finder], .card", (all) =>
        all.filter((one) => (one as HTMLElement).offsetHeight > 0).map((one) => one.className),
      );
      expect(shown).toEqual(["card", "card", "card", "card"]);
    });

    it("says for a stated book which kits fit, keeps it in the address and lets the links carry it", async () => {
      await visit(served(), page, "index.html");
      await page.click("[data-finder] summary");
      for (const [name, text] of [
        ["leafHeight", "20.5 cm"],
        ["leafWidth", "5"],
        ["blockThickness", "16"],
        ["leaves", "130"],
      ] as const)
        await write(name, text);
      // 5 mm is less than a leaf may be wide: the field says what is allowed, and the rest counts.
      expect(await textOf(page, "#find-leafWidth-help", /Allowed/)).toContain("30");
      expect(await textOf(page, RESULT, /marked field/)).toContain("For leaf width");
      await write("leafWidth", "75");
      await page.waitForFunction(() => location.search === "?height=205&width=75&thick=16&leaves=130");
      await textOf(page, RESULT, /^4 kits: /);
      for (const slug of FIXTURE_KITS) {
        const verdict = await textOf(page, `${card(slug)} .verdict`);
        const link = await page.$eval(`${card(slug)} h3 a`, (one) => one.getAttribute("href")!);
        expect(link).toContain(`kits/${slug}/index.html?height=205&width=75&thick=16&leaves=130`);
        if (verdict.startsWith("Fits with a change")) expect(link.length).toBeGreaterThan(70);
        if (verdict.startsWith("Does not fit")) expect(verdict.length).toBeGreaterThan(40);
      }
    });

    it("opens a kit refitted to the book", async () => {
      await visit(served(), page, "index.html?height=205&width=135&thick=16&leaves=130");
      await textOf(page, `${card("little-gull")} .verdict`, /Fits as it is/);
      await Promise.all([page.waitForNavigation(), page.click(`${card("little-gull")} h3 a`)]);
      await textOf(page, "[data-refit-state]", /worked out for your book/);
      expect(await page.$eval("#fit-leaves", (field) => (field as HTMLInputElement).value)).toBe("130");
      await Promise.all([page.waitForNavigation(), page.goBack()]);
      await textOf(page, RESULT, /4 kits: /);
      expect(await page.$eval("#find-leafHeight", (field) => (field as HTMLInputElement).value)).toBe("205 mm");
    });

    it("opens a kit with the change that was chosen", async () => {
      await visit(served(), page, "index.html?height=110");
      const gull = card("little-gull");
      expect(await textOf(page, `${gull} .verdict`)).toMatch(/^Fits with a change.*Make the picture \d+\smm tall/);
      await Promise.all([page.waitForNavigation(), page.click(`${gull} .verdict a`)]);
      await textOf(page, "[data-refit-state]", /worked out for your book/);
    });

    it("filters and sorts, says how many are left, and leads back when nothing is", async () => {
      await visit(served(), page, "index.html?levels=2");
      expect(await titles()).toEqual(["Little Gull"]);
      expect(await textOf(page, RESULT)).toBe("1 of 4 kits.");
      await page.select("#find-light", "with");
      await textOf(page, RESULT, /0 of 4/);
      expect(await search()).toBe("?levels=2&light=with");
      expect(await page.$eval("[data-finder-empty]", (one) => one.checkVisibility())).toBe(true);
      await page.focus("[data-finder-all]");
      await page.keyboard.press("Enter");
      expect(await titles()).toEqual(["Evening Boat", "Harbour Moon", "Little Gull", "Tide and Lamp"]);
      expect(await search()).toBe("");
      expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("SUMMARY");
      await page.select("#find-sort", "hours");
      await page.waitForFunction(() => location.search === "?sort=hours");
      expect((await titles())[0]).toBe("Little Gull");
      await write("hours", "4");
      await textOf(page, RESULT, /1 of 4/);
      expect(await titles()).toEqual(["Little Gull"]);
    });

    it("reads and writes inches for a reader who measures in inches", async () => {
      await visit(served(), page, "index.html");
      await page.click("[data-finder] summary");
      await page.click('label:has(input[value="in"])');
      await write("leafHeight", "8 1/2");
      await textOf(page, RESULT, /4 kits/);
      expect(await search()).toBe("?height=215.9");
      await page.click('label:has(input[value="mm"])');
      expect(await page.$eval("#find-leafHeight", (field) => (field as HTMLInputElement).value)).toBe("215.9 mm");
    });

    it("changes no figure of the book when the units are changed, and changed back", async () => {
      await visit(served(), page, "index.html?height=198&width=128&thick=18");
      await textOf(page, RESULT, /4 kits/);
      await page.click('label:has(input[value="in"])');
      await write("leaves", "160");
      await page.waitForFunction(() => location.search.includes("leaves=160"));
      expect(await search()).toBe("?height=198&width=128&thick=18&leaves=160");
      await page.click('label:has(input[value="mm"])');
      expect(await page.$eval("#find-leafHeight", (field) => (field as HTMLInputElement).value)).toBe("198 mm");
    });

    it("offers the book that was kept, with its page numbers, and keeps one", async () => {
      await visit(served(), page, "index.html");
      await page.evaluate(() => localStorage.setItem("leaflight-book", "height=200&leaves=140&last=272"));
      await page.reload();
      await page.click("[data-finder] summary");
      await page.click("[data-finder-kept]");
      await textOf(page, RESULT, /4 kits: /);
      expect(await search()).toBe("?height=200&leaves=140&last=272");
      await write("leaves", "150");
      await textOf(page, RESULT, /4 kits: /);
      await page.waitForFunction(() => location.search === "?height=200&leaves=150");
      await page.click("[data-finder-keep]");
      await textOf(page, RESULT, /saved in this browser/);
      expect(await page.evaluate(() => localStorage.getItem("leaflight-book"))).toBe("height=200&leaves=150");
    });

    // Source: axe-core's rules after WCAG 2. WCAG 2.2, 1.4.10 Reflow for 320 px.
    it.each([
      [1280, "light"],
      [390, "dark"],
      [320, "light"],
    ])("at %d px, %s: axe finds nothing in the open finder and nothing scrolls sideways", async (width, scheme) => {
      await page.setViewport({ width, height: 900 });
      await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      for (const address of ["index.html?height=150&width=60&thick=12&leaves=90", "index.html?levels=9"]) {
        await visit(served(), page, address);
        await textOf(page, RESULT, /kits[:.]/);
        const found = await axeFindings(page);
        expect(found).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
    });

    it("works by keyboard alone", async () => {
      await visit(served(), page, "index.html");
      await page.focus("[data-finder] summary");
      await page.keyboard.press("Enter");
      for (let i = 0; i < 3; i += 1) await page.keyboard.press("Tab");
      expect(await page.evaluate(() => document.activeElement?.id)).toBe("find-leafHeight");
      await page.keyboard.type("205");
      await page.keyboard.press("Enter");
      await textOf(page, RESULT, /4 kits: /);
      expect(await search()).toBe("?height=205");
    });
  });
}
