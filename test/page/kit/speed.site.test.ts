import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MOST_AT_FIRST, MOST_SCRIPT } from "../../benchmark/bounds.ts";
import { PAGES, TYPED } from "../../benchmark/scenes.ts";
import { bytesOf, scriptsOf, totalOf } from "../../benchmark/sizes.ts";
import { typeFigures } from "../../benchmark/typing.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { timeTurns } from "../turns.ts";

/** Pages that fetch what fits them to a reader's book only for her. */
const FITS_ANEW = /^kits\/[^/]+\/(index|packet\/.*)\.html$/;

/** Most turns of the loop that the answer at a key takes, with the way to the worker and back; a turn is about half a frame on a machine of 2025. */
const MOST_TURNS = 8;

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
  // In turns of a plain loop in the same page, and the quickest of both, because other programs may hold the processor for
  // a while: that only ever adds. `npm run benchmark` measures in milliseconds.
  it.each(TYPED)("is computed in a few turns of a loop: $name", async ({ address, fields }) => {
    const page = await site.device.newPage();
    await page.goto(`${site.host.site}${address}`, { waitUntil: "networkidle0" });
    const turns = await page.evaluate(timeTurns);
    const times = await typeFigures(page, fields, 5);
    turns.push(...(await page.evaluate(timeTurns)));
    await page.close();
    const computed = times.map((one) => one.computed);
    expect(Math.min(...computed)).toBeGreaterThan(0);
    expect(Math.min(...computed)).toBeLessThan(MOST_TURNS * Math.min(...turns));
  });
});
