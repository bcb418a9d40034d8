import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { AT_ONCE, FRAME, MOST_AT_FIRST, MOST_SCRIPT } from "../../benchmark/bounds.ts";
import { middleAndMost } from "../../benchmark/numbers.ts";
import { PAGES, TYPED } from "../../benchmark/scenes.ts";
import { bytesOf, scriptsOf, totalOf } from "../../benchmark/sizes.ts";
import { typeFigures } from "../../benchmark/typing.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";

/** Pages that fetch what fits them to a reader's book only for her. */
const FITS_ANEW = /^kits\/[^/]+\/(index|packet\/.*)\.html$/;

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});

afterAll(() => site?.close());

describe("the scripts of a page", () => {
  it.each(PAGES)("are small: %s", (page) => {
    const scripts = scriptsOf(site.dist, page);
    expect(scripts.length).toBeGreaterThan(0);
    expect(totalOf(scripts)).toBeLessThan(FITS_ANEW.test(page) ? MOST_AT_FIRST : MOST_SCRIPT);
  });

  it.each(["refit", "fit-packet"])("are small where they come for a reader's book: %s", (name) => {
    expect(bytesOf(site.dist, `assets/scripts/${name}.js`)).toBeLessThan(MOST_SCRIPT);
  });
});

describe("a key press in the fit panel at 200 leaves", () => {
  // Medians and a second try, because other programs may hold the processor for a while.
  it.each(TYPED)("is computed within a frame and painted at once: $name", { retry: 2 }, async ({ address, fields }) => {
    const page = await site.device.newPage();
    await page.goto(`${site.host.site}${address}`, { waitUntil: "networkidle0" });
    const times = await typeFigures(page, fields, 5);
    await page.close();
    expect(Math.min(...times.map((one) => one.computed))).toBeGreaterThan(0);
    expect(middleAndMost(times.map((one) => one.computed)).median).toBeLessThan(FRAME);
    expect(middleAndMost(times.map((one) => one.painted)).median).toBeLessThan(AT_ONCE);
  });
});
