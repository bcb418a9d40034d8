import axe from "axe-core";
import type { BrowserContext, Page } from "puppeteer";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newDevice, type OpenedSite, openSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";

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

const DIALOG = ".measure-dialog[open]";

async function begin(path: string): Promise<void> {
  await visit(site, page, path);
  if (path === "index.html") await page.tap("[data-finder] summary");
  await page.tap("[data-measure]");
  await page.waitForSelector(DIALOG);
}

async function answer(texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(texts)) {
    await page.$eval(`#measure-${name}`, (field) => (field as HTMLInputElement).select());
    await page.type(`#measure-${name}`, text);
  }
  await page.tap("[data-measure-next]");
}

function title(): Promise<string> {
  return page.$eval("[data-measure-title]", (one) => one.textContent!);
}

async function confirmPages(): Promise<void> {
  await textOf(page, "[data-measure-question]", /leaf 20\./);
  await page.tap("[data-measure-yes]");
  await textOf(page, "[data-measure-question]", /leaf 1\d\d\./);
  await page.tap("[data-measure-yes]");
}

describe("the book in four questions, on a phone", () => {
  it("fills the finder: what is measured, page numbers too, is carried to the kits", async () => {
    await begin("index.html");
    expect(await textOf(page, "[data-measure-step]")).toBe("1 of 4");
    await answer({ lastPage: "253", pageOneLeaf: "3", behind: "1" });
    await confirmPages();
    // By hand: 127 leaves carry pages 1 to 253, two stand before them and one behind: 130.
    expect(await textOf(page, "[data-measure-told]", /130 leaves/)).toContain("130");
    await answer({ leafHeight: "20,5 cm" });
    await answer({ leafWidth: "5 5⁄16”" });
    expect(await textOf(page, "[data-measure-step]")).toBe("4 of 4");
    await answer({ blockThickness: "16" });
    await page.waitForFunction(() => location.search !== "");
    // 5 5/16 in are 134.9375 mm (international inch).
    expect(await page.evaluate(() => location.search)).toBe(
      "?height=205&width=134.9375&thick=16&leaves=130&page-one=3&last=253&plates=",
    );
    expect(await page.$(DIALOG)).toBeNull();
    expect(await page.evaluate(() => document.activeElement?.hasAttribute("data-measure"))).toBe(true);
  });

  it("fills a kit's page, whose empty fields keep what the kit has", async () => {
    await begin("kits/little-gull/index.html");
    const hint = await page.$eval("#measure-leafHeight", (field) => (field as HTMLInputElement).placeholder);
    const own = await page.$eval("#fit-leafHeight", (field) => (field as HTMLInputElement).defaultValue);
    expect(hint).toBe(`kit’s: ${own}`);
    await answer({ lastPage: "260" });
    await confirmPages();
    await answer({});
    await answer({});
    await answer({ blockThickness: "15,5" });
    await textOf(page, "[data-refit-state]", /for your book/);
    expect(await page.evaluate(() => location.search)).toBe("?thick=15.5&leaves=130&page-one=1&last=260&plates=");
    expect(await page.$eval("#fit-leafHeight", (field) => (field as HTMLInputElement).value)).toBe(own);
  });

  it("finds out where page 1 is, and that leaves have no number", async () => {
    await begin("index.html");
    await answer({ lastPage: "390", pageOneLeaf: "3" });
    await textOf(page, "[data-measure-question]", /leaf 20\. Its front should carry page 35\./);
    await page.tap("[data-measure-no]");
    await answer({ page: "34" });
    expect(await textOf(page, "[data-measure-told]", /odd/)).toContain("leaf 20");
    await answer({ page: "33" });
    expect(await textOf(page, "[data-measure-told]", /page 1 is on leaf 4/)).not.toBe("");
    await page.tap("[data-measure-no]");
    await answer({ page: "333" });
    expect(await textOf(page, "[data-measure-told]", /no number/)).toContain("3 leaves");
    await answer({ plates: "192 x 3" });
    // 195 leaves with pages, three before them, three among them.
    expect(await textOf(page, "[data-measure-told]", /leaves/)).toContain("201");
    await page.tap("[data-measure-back]");
    expect(await page.$eval("#measure-pageOneLeaf", (field) => (field as HTMLInputElement).value)).toBe("4");
  });

  it("stays at a question whose text it cannot read and says what it can", async () => {
    await begin("index.html");
    await answer({ lastPage: "many" });
    expect(await title()).toBe("How many pages does it have?");
    expect(await page.$eval("#measure-lastPage-help", (help) => help.textContent)).toContain("Allowed");
    await answer({ lastPage: "" });
    await page.$eval("#measure-lastPage", (field) => {
      (field as HTMLInputElement).value = "";
    });
    await page.tap("[data-measure-next]");
    expect(await title()).toBe("How tall is a leaf?");
    await answer({ leafHeight: "7 1/4 ft" });
    expect(await title()).toBe("How tall is a leaf?");
    expect(await page.$eval("#measure-leafHeight", (field) => field.getAttribute("aria-invalid"))).toBe("true");
  });

  it("changes nothing where it is left", async () => {
    await begin("index.html");
    await answer({ lastPage: "253" });
    await page.keyboard.press("Escape");
    await page.waitForFunction(() => !document.querySelector(".measure-dialog"));
    expect(await page.evaluate(() => location.search)).toBe("");
  });

  it("shows pads of keys that have what is asked for, and controls for fingers, and is accessible at each step", async () => {
    await begin("index.html");
    const keysOf = (name: string) => page.$eval(`#measure-${name}`, (field) => (field as HTMLInputElement).inputMode);
    expect([await keysOf("lastPage"), await keysOf("leafHeight")]).toEqual(["numeric", "decimal"]);
    await page.evaluate(axe.source);
    for (let step = 1; step <= 4; step += 1) {
      const { violations } = await page.evaluate(() =>
        (self as unknown as { axe: typeof axe }).axe.run(".measure-dialog"),
      );
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
      const small = await page.$$eval(
        ".measure-dialog button, .measure-dialog label:has(input), .measure-dialog .field input",
        (all) =>
          all
            .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 43.9)
            .map((one) => one.outerHTML),
      );
      expect(small).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
      if (step === 2) {
        await page.$eval('[name="units-leafHeight"][value="in"]', (radio) => (radio as HTMLInputElement).click());
        expect(await keysOf("leafWidth")).toBe("text");
      }
      if (step < 4) await page.tap("[data-measure-next]");
    }
  });

  it("is not offered without JavaScript, where the form is not either", async () => {
    await page.setJavaScriptEnabled(false);
    await visit(site, page, "kits/little-gull/index.html");
    expect(await page.$eval("[data-measure]", (button) => button.checkVisibility())).toBe(false);
  });
});
