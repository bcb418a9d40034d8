import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Project } from "../../site/project.ts";
import type { Host } from "../../site/serve.ts";
import { openSite } from "../../site/shared-site.ts";
import { markedProject, spoilKits } from "./pseudo/marked-project.ts";
import { pageOverflow } from "./pseudo/page-overflow.ts";
import { pageTexts } from "./pseudo/page-texts.ts";
import { faultsIn, filesOf, jsonTexts, pageFaults, pdfTexts, xmlTexts } from "./pseudo/said.ts";
import { scriptSuite } from "./pseudo/script-suite.ts";
import { unmarked } from "./pseudo/unmarked.ts";

/** Names in messages that are the same in every language. */
const FOLDER = /\b(?:dist\/)?private(?:\/[\w-]+)*\/?/g;
const NAMED = [
  FOLDER,
  // Folders that their author named, and where the browser is.
  /\b(?:harbour-moon|little-gull|evenings)\b/g,
  /\/\S*chrom\S*/g,
  // Fields and choices of front matter.
  / {2}(?:title|fit\.\w+|levels\[2\]): /g,
  /insert\.motifs(?:\[\d\])?/g,
  /\btitle, summary(?:, \w+)+/g,
  /\bsingle, stepped, corner\b/g,
  / title$/g,
];

let project: Project;
let dist: string;
let host: Host;
let browser: Browser;
let close: () => Promise<void>;
let built: ReturnType<Project["build"]>;

beforeAll(async () => {
  project = markedProject();
  project.write(
    "content/words/en/own.ftl",
    "kit-supplies = What lies ready\nbench-jump-not-whole = Whole numbers only\n",
  );
  built = project.build();
  if (built.code !== 0) throw new Error(`nothing was built, or something does not fit its sheet:\n${built.stderr}`);
  dist = join(project.folder, "dist");
  ({ host, browser, close } = await openSite(project.folder));
});

afterAll(async () => {
  await close?.();
  project?.remove();
});

/** What a terminal showed of our own. */
const ours = (told: string) =>
  told
    .split("\n")
    .filter((line) => !line.startsWith("[11ty]"))
    .map((text) => ({ where: "terminal", text }));

describe("the check of a text", () => {
  it.each([
    ["«Whôlé loo» 3 mm", []],
    ["«Püt» 3 leaves «héré»", ["leaves"]],
    ["«thé «Gull» stànds» now", ["now"]],
    ["«nôt clôséd", ["« without » in …«nôt clôséd"]],
    ["A4, CR2032, US Letter and 14 January 2027", []],
  ])("%s: %j", (text, found) => {
    expect(unmarked(text)).toEqual(found);
  });
});

describe("a site in the pseudo-language", () => {
  it("has no unmarked word on a page as it is loaded", async () => {
    const page = await browser.newPage();
    await page.setJavaScriptEnabled(false);
    const found: string[] = [];
    const pages = filesOf(dist, ".html");
    expect(pages.length).toBeGreaterThan(20);
    for (const file of pages) {
      await page.goto(host.site + file, { waitUntil: "domcontentloaded" });
      expect((await page.evaluate(pageTexts)).length, file).toBeGreaterThan(5);
      found.push(...(await pageFaults(page, file)));
    }
    await page.close();
    expect(found).toEqual([]);
  });

  it("has no page with scripts that says an unmarked word, is wider than its window or cuts a label", async () => {
    const page = await browser.newPage();
    const found: string[] = [];
    for (const file of filesOf(dist, ".html")) {
      await page.setViewport({ width: 1280, height: 900 });
      await page.goto(host.site + file, { waitUntil: "load" });
      found.push(...(await page.evaluate(pageOverflow)).map((fault) => `${file} at 1280 px: ${fault}`));
      await page.setViewport({ width: 390, height: 900 });
      found.push(...(await page.evaluate(pageOverflow)).map((fault) => `${file} at 390 px: ${fault}`));
      found.push(...(await pageFaults(page, file)));
    }
    await page.close();
    expect(found).toEqual([]);
  });

  it("has no unmarked word in what machines read to people: drawings, feed, manifest, structured data", () => {
    const data = filesOf(dist, ".html").flatMap((file) =>
      [
        ...readFileSync(join(dist, file), "utf8").matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs),
      ].flatMap(([, json]) => jsonTexts(JSON.parse(json!), file)),
    );
    const drawings = [...filesOf(dist, "front.svg"), ...filesOf(dist, "front-lit.svg")].flatMap((file) =>
      xmlTexts(dist, file, ["title", "desc", "text"]),
    );
    const feed = xmlTexts(dist, "feed.xml", ["title", "subtitle", "name", "summary", "rights"]);
    const manifest = jsonTexts(JSON.parse(readFileSync(join(dist, "manifest.webmanifest"), "utf8")), "manifest");
    for (const texts of [data, drawings, feed, manifest]) {
      expect(texts.length).toBeGreaterThan(1);
      expect(faultsIn(texts)).toEqual([]);
    }
  });

  it("has no unmarked word in a PDF: on its pages, at their feet, in its bookmarks and its title", async () => {
    const files = filesOf(dist, ".pdf").filter((file) => !file.includes("all-seats"));
    expect(files.length).toBeGreaterThan(10);
    const found: string[] = [];
    for (const file of files) found.push(...faultsIn(await pdfTexts(dist, file), [FOLDER]));
    expect(found).toEqual([]);
  });

  it("is told about in marked words, also where a kit cannot be built", () => {
    const warned = ours(built.stderr + built.stdout);
    expect(warned.length).toBeGreaterThan(6);
    expect(faultsIn(warned, NAMED)).toEqual([]);
    spoilKits(project);
    const broken = project.build();
    expect(broken.code).toBe(1);
    for (const field of ["levels[2]", "fit.foldStyle", "fit.head", "fit.height", "title"])
      expect(broken.stderr).toContain(`  ${field}: `);
    expect(faultsIn(ours(broken.stderr + broken.stdout), NAMED)).toEqual([]);
  });

  it("says a phrase on its pages as own.ftl does; the next suite asks a script", () => {
    expect(readFileSync(join(dist, "kits/little-gull/index.html"), "utf8")).toContain("«Whàt lîés réàdy loong»");
  });
});

scriptSuite(() => ({ host, browser }));
