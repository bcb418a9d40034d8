import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MOST_CATALOGUE, MOST_OUTLINE, MOST_VISIT } from "../benchmark/bounds.ts";
import { firstVisit, sumOf } from "../benchmark/first-visit.ts";
import { findAmongMany } from "../benchmark/many-kits.ts";
import { FIRST_PAGES } from "../benchmark/scenes.ts";
import { FIXTURE_KITS } from "../input/kit/kit-folders.ts";
import { type OpenedSite, openSite } from "../site/shared-site.ts";

let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

/** What was fetched, heaviest first, for the message of a test that fails. */
function told(files: ReadonlyMap<string, number>): string {
  return [...files]
    .toSorted(([, a], [, b]) => b - a)
    .map(([path, bytes]) => `${bytes} ${path}`)
    .join("\n");
}

describe("a first visit", () => {
  const visited = (path: string) => firstVisit(site.browser, { site: site.host.site, dist: site.dist }, path);

  it("of the catalogue is light, with all its pictures", async () => {
    const files = await visited("index.html");
    for (const slug of FIXTURE_KITS) expect([...files.keys()]).toContain(`kits/${slug}/small.webp`);
    expect(sumOf(files), told(files)).toBeLessThan(MOST_CATALOGUE);
  });

  it.each([
    ...FIRST_PAGES,
    ...FIXTURE_KITS.map((slug) => `kits/${slug}/index.html`),
    "classes/winter-evenings/index.html",
    "classes/winter-evenings/seat-1/index.html",
  ])("is not heavy before something is opened: %s", async (path) => {
    const files = await visited(path);
    expect(files.get(path), told(files)).toBeGreaterThan(500);
    expect(sumOf(files), told(files)).toBeLessThan(MOST_VISIT);
  });
});

describe("the finder among a hundred kits", () => {
  it("asks an index of less than a kilobyte a kit, and then a few of them", async () => {
    const { asked, indexBytes } = await findAmongMany(site.browser, site.host, site.dist);
    expect(indexBytes).toBeLessThan(MOST_OUTLINE);
    expect(asked).toBeLessThanOrEqual(12);
    expect(asked).toBeGreaterThan(0);
  });

  it("asks no kit that its outline rules out, and says why", async () => {
    const page = await site.device.newPage();
    const before = site.host.asked.length;
    // 390 pages need 195 leaves and more: the figures contradict each other, whatever the kit.
    await page.goto(`${site.host.site}index.html?leaves=20&last=390`, { waitUntil: "load" });
    await page.waitForFunction(() => document.querySelectorAll(".verdict.no").length > 3);
    const asked = site.host.asked.slice(before);
    expect(asked).toContain("assets/finder-index.js");
    expect(asked.filter((path) => path.endsWith("kit-data.js"))).toEqual([]);
    expect(await page.$eval(".verdict.no", (one) => one.textContent)).toMatch(/needs 19\d leaves/);
    await page.close();
  });

  it("has an outline of every kit in its index", () => {
    const index = readFileSync(join(site.dist, "assets/finder-index.js"), "utf8");
    for (const slug of FIXTURE_KITS) expect(index).toContain(`"slug":"${slug}"`);
  });
});
