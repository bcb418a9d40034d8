import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import axe from "axe-core";
import type { Browser, BrowserContext, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { kitJsonSchema } from "../../../src/input/kit/schema.ts";
import { published } from "../../core/pattern/published.ts";
import { fixtureFrontMatter, readMadeKit } from "../../input/kit/kit-folders.ts";
import { ADDRESS } from "../../site/address.ts";
import { makeProject, PACKETS } from "../../site/project.ts";
import { newDevice, sharedBrowser } from "../../site/shared-site.ts";

const KITS = ["harbour-moon", "little-gull"];

const { folder } = inject("site");
const dist = join(folder, "dist");
/** Every file of the shared site. */
const first = read(dist);

function filesIn(site: string): string[] {
  return readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(site, join(entry.parentPath, entry.name)))
    .sort();
}

function read(site: string): Map<string, Buffer> {
  return new Map(filesIn(site).map((file) => [file, readFileSync(join(site, file))]));
}

const files = () => [...first.keys()];
const pages = () => files().filter((file) => file.endsWith(".html"));
/** The page for missing addresses may stand at any depth: it alone links from the host's root (published.site.test.ts). */
const placed = () => pages().filter((file) => file !== "404.html");
const text = (file: string) => first.get(file)!.toString("utf8");

/** The attributes of every tag of a page that have one of these names. */
function attributes(html: string, names: string): string[] {
  return [...html.matchAll(new RegExp(`<[a-z][^>]*?\\s(?:${names})="([^"]*)"`, "gi"))].map((match) =>
    match[1]!.replaceAll("&amp;", "&"),
  );
}

describe("the built site", () => {
  it("has a page, packet, table, pattern and picture for each kit, and the catalogue", () => {
    const wanted = KITS.flatMap((slug) =>
      [
        "index.html",
        "make/index.html",
        "packet/index.html",
        "packet/large.html",
        "pattern.json",
        "pattern.csv",
        "front.svg",
        "cover.jpg",
        "packet-a4.pdf",
        "packet-letter.pdf",
      ].map((name) => `kits/${slug}/${name}`),
    );
    expect(files()).toEqual(expect.arrayContaining(["index.html", "schema/kit.json", ...wanted]));
    for (const slug of KITS) expect(text("index.html")).toContain(`href="kits/${slug}/index.html"`);
  });

  it("has no link that leads nowhere", () => {
    const dead: string[] = [];
    let checked = 0;
    for (const page of placed()) {
      // Forms of cut files that the page makes itself: tests of the page press them, and they are hidden where it cannot.
      const html = text(page).replace(/<a href="cut\/[^"]+" data-made>/g, "");
      for (const link of [...attributes(html, "href|src|poster"), ...attributes(html, "data-src")]) {
        if (/^(https?:|mailto:|data:)/.test(link)) continue;
        const url = new URL(link, pathToFileURL(join(dist, page)));
        const path = fileURLToPath(new URL(url.pathname, url));
        const inside = path.startsWith(dist);
        const there = inside && statSync(path, { throwIfNoEntry: false })?.isFile() === true;
        const id = decodeURIComponent(url.hash.slice(1));
        const anchored = id === "" || (there && readFileSync(path, "utf8").includes(` id="${id}"`));
        checked += 1;
        if (!there || !anchored) dead.push(`${page}: ${link}`);
      }
    }
    expect(dead).toEqual([]);
    expect(checked).toBeGreaterThan(60);
  });

  it("has no address that is bound to one place or protocol", () => {
    for (const page of placed()) {
      for (const link of attributes(text(page), "href|src")) expect(link).not.toMatch(/^(\/|file:|javascript:|http:)/);
    }
  });

  it("has style sheets whose fonts are there", () => {
    const sheets = files().filter((file) => file.endsWith(".css"));
    const links = sheets.flatMap((sheet) =>
      [...text(sheet).matchAll(/url\(["']?([^"')]+)["']?\)/g)].map((match) => join(dirname(sheet), match[1]!)),
    );
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((link) => !link.includes("data:") && !files().includes(link))).toEqual([]);
  });

  it("has no inline script; data blocks are not scripts", () => {
    for (const page of pages()) {
      const html = text(page);
      for (const [tag, inside] of html.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/gi)) {
        if (tag.startsWith('<script type="application/ld+json">')) continue;
        expect(tag).toMatch(/^<script src="[^"]+"/);
        expect(inside).toBe("");
      }
      expect(html).not.toMatch(/<[a-z][^>]*\son[a-z]+\s*=/i);
    }
  });

  it("shows no value that was not filled in", () => {
    for (const [file, bytes] of first) {
      if (!/\.(html|svg|csv|json)$/.test(file)) continue;
      expect(/\$\{|\{\{|\bNaN\b|\bundefined\b|\[object /.exec(bytes.toString())?.[0], file).toBeUndefined();
    }
  });

  it("publishes the schema of the front matter", () => {
    expect(JSON.parse(text("schema/kit.json"))).toEqual(kitJsonSchema());
  });

  it("is the same, byte for byte, when it is built again", () => {
    const again = makeProject({ classes: true, kept: [join(folder, PACKETS)] });
    const { code, stdout } = again.build({ LEAFLIGHT_SITE_URL: ADDRESS });
    expect(code).toBe(0);
    expect(stdout).not.toContain("Printing");
    const second = read(join(again.folder, "dist"));
    again.remove();
    expect([...second.keys()]).toEqual([...first.keys()]);
    const same = [...first].filter(([file]) => /\.(html|json|xml|csv|svg|css|js|dxf|woff2)$/.test(file));
    expect(same.length).toBeGreaterThan(20);
    expect(same.filter(([file, bytes]) => !bytes.equals(second.get(file)!)).map(([file]) => file)).toEqual([]);
  });
});

describe("the pages in a browser", () => {
  let browser: Browser;
  /** A new one for each page: nothing is kept from one test to the next. */
  let device: BrowserContext | undefined;
  beforeAll(async () => {
    browser = await sharedBrowser();
  });
  afterAll(async () => {
    await device?.close();
    await browser?.disconnect();
  });

  const PAGES = [
    "index.html",
    "kits/harbour-moon/index.html",
    "kits/little-gull/index.html",
    "guide/index.html",
    "guide/making-a-kit/index.html",
    "guide/kit-keys/index.html",
    "kits/little-gull/packet/index.html",
  ];

  async function open(file: string, width: number): Promise<Page> {
    await device?.close();
    device = await newDevice(browser);
    const page = await device.newPage();
    await page.setViewport({ width, height: 900 });
    const failed: string[] = [];
    page.on("requestfailed", (request) => failed.push(request.url()));
    page.on("pageerror", (error) => failed.push(String(error)));
    await page.goto(pathToFileURL(join(dist, file)).href, { waitUntil: "load" });
    expect(failed).toEqual([]);
    return page;
  }

  const CASES = PAGES.flatMap((file) => [1280, 390].map((width) => [file, width] as const));

  // Source: axe-core's rules after WCAG 2, an independent checker.
  it.each(CASES)("%s at %d px: axe finds nothing", async (file, width) => {
    const page = await open(file, width);
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document);
      return violations.map(
        (one) =>
          `${one.id}: ${one.nodes
            .map((node) => node.html.slice(0, 120))
            .slice(0, 3)
            .join(" | ")}`,
      );
    });
    expect(found).toEqual([]);
    await page.close();
  });

  // WCAG 2.2, 1.4.10 Reflow: no scrolling in two dimensions at 320 CSS pixels.
  it.each(PAGES.filter((file) => !file.includes("packet")))("%s does not scroll sideways at 320 px", async (file) => {
    const page = await open(file, 320);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(320);
    await page.close();
  });

  /** Leaves and their marks as the table shows them, once its chapter is open. */
  const shownMarks = (page: Page) =>
    page.evaluate(() => {
      document.querySelector("#pattern")!.closest("details")!.open = true;
      return [...document.querySelectorAll<HTMLElement>("table.pattern tbody tr")].map((row) => {
        const marks = [...row.querySelectorAll<HTMLElement>("td i")].filter((mark) => mark.checkVisibility());
        const at = marks.map((mark) => mark.firstChild!.textContent!.trim());
        return [Number(row.querySelector("th")!.textContent), at] as const;
      });
    });

  /** `1 13/16` as thirty-seconds of an inch. */
  const thirtySeconds = (mark: string) =>
    mark
      .split(" ")
      .map((part) => part.split("/").map(Number))
      .reduce((sum, [over, under = 1]) => sum + (32 * over!) / under, 0);

  /** Waits until the page is written anew. */
  const chooseInches = async (page: Page) => {
    await page.click('label:has(input[value="in"])');
    await page.waitForFunction(() => performance.getEntriesByName("fit filled").length > 0);
  };

  it("the switch shows inches, computed from the picture and not from the rounded millimetres", async () => {
    const page = await open("kits/harbour-moon/index.html", 1280);
    const inMillimetres = new Map(await shownMarks(page));
    const { leaves } = JSON.parse(text("kits/harbour-moon/pattern.json"));
    for (const leaf of leaves) {
      expect(inMillimetres.get(leaf.leaf)!.map(Number)).toEqual(leaf.cuts.map((cut: { at: number }) => cut.at));
    }
    await chooseInches(page);
    const inInches = new Map(await shownMarks(page));
    const { light: _light, insert: _insert, ...frontMatter } = fixtureFrontMatter("harbour-moon");
    const svg = readFileSync(join(folder, "content/kits/harbour-moon/moon.svg"), "utf8");
    const twin = published(
      readMadeKit(
        {
          ...frontMatter,
          picture: { ...frontMatter.picture, file: "picture.svg" },
          fit: { ...frontMatter.fit, markStep: "1/32 in" },
        },
        svg,
      ),
    );
    for (const leaf of twin.leaves) {
      const marks = leaf.cuts.map((cut) => Math.round((cut.at * 32) / 25.4));
      expect(inInches.get(leaf.leaf)!.map(thirtySeconds)).toEqual(marks);
    }
    await page.close();
  });

  it("the hold width in inches is the published one to the nearest thirty-second", async () => {
    const page = await open("kits/little-gull/index.html", 1280);
    await chooseInches(page);
    const shown = await page.evaluate(() => {
      const figure = [...document.querySelectorAll<HTMLElement>("dl.figures div")].find((one) =>
        one.textContent!.includes("Hold width"),
      )!;
      return figure.querySelector("dd")!.firstChild!.textContent!;
    });
    const { fit } = JSON.parse(text("kits/little-gull/pattern.json"));
    expect(thirtySeconds(shown.replace(/\s*in$/, ""))).toBe(Math.round((fit.holdWidth * 32) / 25.4));
    await page.close();
  });

  it("keeps the reader's choice of units from page to page", async () => {
    const page = await open("kits/little-gull/index.html", 1280);
    await page.click('label:has(input[value="in"])');
    await page.goto(pathToFileURL(join(dist, "kits/harbour-moon/index.html")).href);
    const checked = await page.evaluate(() => document.querySelector<HTMLInputElement>("#units-in")!.checked);
    expect(checked).toBe(true);
    await page.close();
  });
});
