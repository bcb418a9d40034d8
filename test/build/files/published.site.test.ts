import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import axe from "axe-core";
import { parseAtomFeed } from "feedsmith";
import type { Browser, BrowserContext } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { ADDRESS } from "../../site/address.ts";
import { htmlFaults } from "../../site/html-faults.ts";
import { makeProject } from "../../site/project.ts";
import type { Host } from "../../site/serve.ts";
import { newDevice, openSite } from "../../site/shared-site.ts";

const MOON = "kits/harbour-moon/index.html";

/** One page of each kind. */
const KINDS = [
  "404.html",
  "glossary/index.html",
  "guide/index.html",
  "guide/kit-keys/index.html",
  "index.html",
  "kits/harbour-moon/bench/index.html",
  MOON,
  "kits/harbour-moon/packet/index.html",
  "kits/harbour-moon/packet/large.html",
  "offline.html",
  "pieces/index.html",
];

let dist: string;
let host: Host;
let browser: Browser;
let device: BrowserContext;
let close: () => Promise<void>;

beforeAll(async () => {
  ({ dist, host, browser, device, close } = await openSite());
});

afterAll(() => close?.());

const pages = () =>
  readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".html"))
    .map((entry) => relative(dist, join(entry.parentPath, entry.name)))
    .sort();
const read = (path: string) => readFileSync(join(dist, path), "utf8");
const metaOf = (html: string, key: string) =>
  new RegExp(`<meta (?:name|property)="${key}" content="([^"]*)">`).exec(html)?.[1];
const hrefOf = (html: string, rel: string) => new RegExp(`<link rel="${rel}"[^>]* href="([^"]*)">`).exec(html)?.[1];

/** Width and height of a JPEG (ITU-T T.81, B.2.2): after the marker of a frame come its length, precision, lines and samples a line. */
function sizeOf(jpeg: Buffer): readonly [number, number] {
  let at = 2;
  while (![0xc0, 0xc1, 0xc2].includes(jpeg[at + 1]!)) at += 2 + jpeg.readUInt16BE(at + 2);
  return [jpeg.readUInt16BE(at + 7), jpeg.readUInt16BE(at + 5)];
}

describe("the pages' HTML", () => {
  it("is found without fault on every page", async () => {
    expect(pages()).toEqual(expect.arrayContaining(KINDS));
    for (const page of pages()) {
      const found = await htmlFaults(read(page), page);
      expect(found).toEqual([]);
    }
  });
});

describe("what a page says of itself", () => {
  it("has one address on every page that is to be found", () => {
    const canonical = Object.fromEntries(KINDS.map((page) => [page, hrefOf(read(page), "canonical")]));
    expect(canonical).toEqual({
      "404.html": undefined,
      "offline.html": undefined,
      "pieces/index.html": `${ADDRESS}pieces/`,
      "glossary/index.html": `${ADDRESS}glossary/`,
      "guide/index.html": `${ADDRESS}guide/`,
      "guide/kit-keys/index.html": `${ADDRESS}guide/kit-keys/`,
      "index.html": ADDRESS,
      [MOON]: `${ADDRESS}kits/harbour-moon/`,
      "kits/harbour-moon/bench/index.html": `${ADDRESS}kits/harbour-moon/bench/`,
      "kits/harbour-moon/packet/index.html": `${ADDRESS}kits/harbour-moon/packet/`,
      "kits/harbour-moon/packet/large.html": `${ADDRESS}kits/harbour-moon/packet/large.html`,
    });
    for (const page of KINDS) expect(metaOf(read(page), "robots"), page).toBe(canonical[page] ? undefined : "noindex");
  });

  // Open Graph protocol, ogp.me: title, type, image and url are required; image:alt goes with an image.
  it("has a preview with a picture of the stated size", async () => {
    const html = read(MOON);
    expect(metaOf(html, "og:title")).toBe("Harbour Moon");
    expect(metaOf(html, "og:type")).toBe("article");
    expect(metaOf(html, "og:url")).toBe(`${ADDRESS}kits/harbour-moon/`);
    expect(metaOf(html, "og:description")).toBe(metaOf(html, "description"));
    expect(metaOf(html, "og:image:alt")).toContain("Harbour Moon");
    const image = metaOf(html, "og:image")!;
    expect(image.startsWith(ADDRESS)).toBe(true);
    expect(metaOf(html, "og:image:type")).toBe("image/jpeg");
    expect(sizeOf(readFileSync(join(dist, image.slice(ADDRESS.length))))).toEqual(
      ["og:image:width", "og:image:height"].map((key) => Number(metaOf(html, key))),
    );
    expect(metaOf(read("index.html"), "og:type")).toBe("website");
  });

  it("leads to the feed and lists every page of the site map", () => {
    expect(hrefOf(read(MOON), "alternate")).toBe("../../feed.xml");
    const { entries } = parseAtomFeed(read("feed.xml"));
    const ofMoon = entries!.filter((entry) => entry.links![0]!.href === `${ADDRESS}kits/harbour-moon/`);
    expect(ofMoon).toHaveLength(3);
    const listed = [...read("sitemap.xml").matchAll(/<loc>(.*?)<\/loc>/g)].map((match) => match[1]!);
    const guide = pages()
      .filter((page) => page.startsWith("guide/"))
      .map((page) => ADDRESS + page.replace("index.html", ""));
    expect(guide.length).toBeGreaterThan(10);
    const wanted = [ADDRESS, `${ADDRESS}kits/harbour-moon/`, `${ADDRESS}glossary/`, ...guide];
    expect(listed).toEqual(expect.arrayContaining(wanted));
    expect(new Set(listed).size).toBe(listed.length);
    for (const address of listed)
      expect(existsSync(join(dist, address.slice(ADDRESS.length), "index.html"))).toBe(true);
  });

  it("shows version, licence and the author's links, which open nothing of themselves", () => {
    const html = read(MOON);
    expect(html).toContain('<a href="#versions">Version 1.2</a>, <time datetime="2026-10-03">3 October 2026</time>');
    expect(html).toContain('rel="license">MIT</a>');
    expect(html).toMatch(
      /<a href="https:\/\/example\.org\/[^"]+" rel="noopener external" dir="auto">Film of the first batch<\/a>/,
    );
    expect(html).toContain("opens example.org");
    expect(html).not.toMatch(/<(iframe|video|embed|object)\b/);
    const pattern = JSON.parse(read("kits/harbour-moon/pattern.json"));
    expect(pattern.version).toBe("1.2");
    expect(read("kits/harbour-moon/packet/index.html")).toContain("version 1.2, 3 October 2026");
  });

  it("carries its steps as data that the policy leaves alone", async () => {
    const page = await device.newPage();
    const wrong: string[] = [];
    page.on("console", (message) => wrong.push(message.text()));
    await page.evaluateOnNewDocument(() => {
      addEventListener("securitypolicyviolation", ({ blockedURI, violatedDirective }) => {
        if (blockedURI === "inline") console.error(violatedDirective);
      });
    });
    await page.goto(`${host.site}${MOON}`, { waitUntil: "load" });
    const { data, ids } = await page.evaluate(() => ({
      data: JSON.parse(document.querySelector('script[type="application/ld+json"]')!.textContent!),
      ids: [...document.querySelectorAll("ol.steps > li")].map((one) => one.id),
    }));
    expect(wrong).toEqual([]);
    expect(data["@type"]).toBe("HowTo");
    const steps = data.step.flatMap((section: { itemListElement: { url: string }[] }) => section.itemListElement);
    expect(steps.map((one: { url: string }) => one.url)).toEqual(ids.map((id) => `${ADDRESS}kits/harbour-moon/#${id}`));
    await page.close();
  });
});

describe("the page for missing addresses", () => {
  it.each([1280, 320])("is whole at any depth, %d px wide", async (width) => {
    const context = await newDevice(browser, { keeps: true });
    const page = await context.newPage();
    await page.setViewport({ width, height: 800 });
    const failed: string[] = [];
    page.on("response", (response) => {
      if (response.status() >= 400 && !response.url().endsWith("/deep/er/missing")) failed.push(response.url());
    });
    page.on("requestfailed", (request) => failed.push(request.url()));
    const response = await page.goto(`${host.site}deep/er/missing`, { waitUntil: "networkidle0" });
    expect(response!.status()).toBe(404);
    const seen = await page.evaluate(async () => ({
      margin: getComputedStyle(document.body).marginTop,
      pictures: [...document.images].map((image) => image.naturalWidth > 0),
      catalogue: document.querySelector<HTMLAnchorElement>("a.button")!.href,
      wide: document.documentElement.scrollWidth,
      scope: (await navigator.serviceWorker.ready).scope,
      manifest: document.querySelector<HTMLLinkElement>('link[rel="manifest"]')!.href,
    }));
    expect(seen).toEqual({
      margin: "0px",
      pictures: FIXTURE_KITS.map(() => true),
      catalogue: `${host.site}index.html`,
      wide: width,
      scope: host.site,
      manifest: `${host.site}manifest.webmanifest`,
    });
    expect(failed).toEqual([]);
    await page.goto(`${host.site}missing`);
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document);
      return violations.map((one) => one.id);
    });
    expect(found).toEqual([]);
    await context.close();
  });
});

describe("a site that states no address", () => {
  it("leaves out what needs one, and says so in a line", () => {
    const bare = makeProject({ kits: [] });
    try {
      bare.write("content/site.yaml", "title: Folds at the quay\n");
      const { code, stdout } = bare.build();
      expect(code).toBe(0);
      expect(stdout.split("\n").filter((line) => line.startsWith("No url in content/site.yaml"))).toHaveLength(1);
      for (const file of ["sitemap.xml", "feed.xml", "404.html"])
        expect(existsSync(join(bare.folder, "dist", file)), file).toBe(false);
      const html = bare.read("dist/index.html");
      expect(html).toContain("<title>Kits · Folds at the quay</title>");
      expect(html).not.toMatch(/og:|canonical|alternate/);
    } finally {
      bare.remove();
    }
  });

  it("stops with one message where a setting is wrong, and makes nothing", () => {
    const bare = makeProject({ kits: [] });
    try {
      bare.write("content/site.yaml", "title: Folds\nurl: folds.example.org\n");
      const { code, stderr } = bare.build();
      expect(code).toBe(1);
      expect(stderr.trim().split("\n")[0]).toMatch(
        /^content\/site\.yaml:2:1 {2}url: given "folds\.example\.org"; allowed: /,
      );
      expect(existsSync(join(bare.folder, "dist"))).toBe(false);
    } finally {
      bare.remove();
    }
  });
});
