import { join } from "node:path";
import type { Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { UnitSystem } from "../../../src/core/units/length.ts";
import { readCautions } from "../../../src/input/cautions/read-cautions.ts";
import { KIT_PARTS, type KitPart } from "../../../src/output/parts/kit-parts.ts";
import { viewKit } from "../../../src/output/views/kit-view.ts";
import { readKit } from "../../input/kit/kit-folders.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";

const ROOT = join(import.meta.dirname, "../../..");
const NAMES = Object.keys(KIT_PARTS) as KitPart[];

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

/** Every part of a kit's page as its author's front matter with these units gives it, through no script. */
function built(slug: string, units: UnitSystem): Record<string, string> {
  const folder = readKit(join(site.folder, "content/kits", slug), site.folder);
  const view = viewKit({ ...folder, kit: { ...folder.kit, units } }, readCautions(ROOT, "en"));
  return Object.fromEntries(NAMES.map((name) => [name, String(KIT_PARTS[name](view))]));
}

/** The words of each part that stands on the page, and of the same markup beside it. */
function compared(page: Page, wanted: Record<string, string>): Promise<{ shown: string[][]; wanted: string[][] }> {
  return page.evaluate((parts) => {
    const textOf = (element: Element): string => {
      for (const label of element.querySelectorAll("[aria-label]"))
        label.append(` ${label.getAttribute("aria-label")}`);
      return element.textContent!;
    };
    const there = [...document.querySelectorAll<HTMLElement>("[data-part]")];
    return {
      shown: there.map((part) => [part.dataset["part"]!, textOf(part.cloneNode(true) as Element)]),
      wanted: there.map((part) => {
        const place = document.createElement("div");
        place.innerHTML = parts[part.dataset["part"]!]!;
        return [part.dataset["part"]!, textOf(place)];
      }),
    };
  }, wanted);
}

async function choose(page: Page, units: UnitSystem): Promise<void> {
  await page.evaluate(() => performance.clearMarks());
  await page.click(`.hero label:has(input[value="${units}"])`);
  await settled(page);
}

async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => performance.getEntriesByName("fit filled").length > 0);
}

describe("the choice of units", () => {
  // With light and window, with light alone, and with neither.
  it.each([
    ["harbour-moon", "in"],
    ["little-gull", "in"],
    ["tide-and-lamp", "mm"],
  ] as const)("%s: every text of the page is written in %s, and back, as the build writes it", async (slug, other) => {
    const page = await site.device.newPage();
    await page.goto(`${site.host.site}kits/${slug}/index.html`, { waitUntil: "load" });
    // Another kit's test has chosen before.
    await page.evaluate(() => localStorage.clear());
    await page.reload({ waitUntil: "load" });
    const own: UnitSystem = other === "in" ? "mm" : "in";
    const asBuilt = await compared(page, built(slug, own));
    expect(asBuilt.shown).toEqual(asBuilt.wanted);
    for (const units of [other, own] as const) {
      await choose(page, units);
      const { shown, wanted } = await compared(page, built(slug, units));
      expect(shown).toEqual(wanted);
      expect(shown.length).toBeGreaterThan(10);
    }
    await choose(page, other);
    // What is kept is the page's when it is opened again.
    await page.reload({ waitUntil: "load" });
    await settled(page);
    const kept = await compared(page, built(slug, other));
    expect(kept.shown).toEqual(kept.wanted);
    await choose(page, own);
    await page.close();
  });

  it("is not offered where nothing can follow it: without scripts", async () => {
    const page = await site.device.newPage();
    await page.setJavaScriptEnabled(false);
    for (const path of ["kits/little-gull/index.html", "kits/little-gull/make/index.html"]) {
      await page.goto(`${site.host.site}${path}`, { waitUntil: "load" });
      expect(await page.$eval(".units", (one) => getComputedStyle(one).display)).toBe("none");
    }
    await page.close();
  });
});
