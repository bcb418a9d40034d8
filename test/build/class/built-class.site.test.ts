import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import jsqr from "jsqr";
import type { Browser, BrowserContext, Page } from "puppeteer";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { ADDRESS } from "../../site/address.ts";
import { axeFindings } from "../../site/axe.ts";
import { htmlFaults } from "../../site/html-faults.ts";
import { SINGLE } from "../../site/own-kits.ts";
import { makeProject } from "../../site/project.ts";
import type { Host } from "../../site/serve.ts";
import { openSite } from "../../site/shared-site.ts";
import { newReader, settled, textOf } from "../../site/visit.ts";
import { readPdf, widthOf } from "../print/read-pdf.ts";

const CLASS = "classes/winter-evenings";
const PRIVATE = `private/${CLASS}`;
const FITTING = [1, 2, 3, 4, 5, 7, 8];

let dist: string;
let host: Host;
let browser: Browser;
let device: BrowserContext;
let close: () => Promise<void>;
const { stderr } = inject("site");
const own = join(inject("ownKits").folder, "dist");

beforeAll(async () => {
  ({ dist, host, browser, device, close } = await openSite());
});

afterAll(() => close?.());

const read = (path: string) => readFileSync(join(dist, path), "utf8");
const readOwn = (path: string) => readFileSync(join(own, path), "utf8");
const pages = () =>
  [CLASS, "private"]
    .flatMap((folder) => readdirSync(join(dist, folder), { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.name.endsWith(".html"))
    .map((entry) => relative(dist, join(entry.parentPath, entry.name)))
    .sort();

/** A page of a large table as it is printed in short. */
const inShort = (html: string) => html.replace(/class="[^"]*" data-short="([^"]*)"/g, 'class="$1"');

/** The batches of a table in short, and the sheets at true scale, on a packet's page. */
const tableOf = (html: string) => /<div class="batches compact">[\s\S]*?<\/section><\/div>/.exec(html)![0];
const scaledOf = (html: string) => [...html.matchAll(/<svg class="drawing"[\s\S]*?<\/svg>/g)].map(([svg]) => svg);

describe("a seat's files", () => {
  it.each(SINGLE)("of seat $seat are those of a kit with its book", ({ seat, slug }) => {
    const one = JSON.parse(read(`${CLASS}/seat-${seat}/pattern.json`));
    const other = JSON.parse(readOwn(`kits/${slug}/pattern.json`));
    expect({ ...one, kit: "" }).toEqual({ ...other, kit: "" });
    expect(read(`${CLASS}/seat-${seat}/pattern.csv`)).toBe(readOwn(`kits/${slug}/pattern.csv`));
    const packet = read(`${CLASS}/seat-${seat}/packet/index.html`);
    expect(tableOf(packet)).toBe(tableOf(inShort(readOwn(`kits/${slug}/packet/large.html`))));
    const drawings = scaledOf(readOwn(`kits/${slug}/packet/index.html`));
    expect(scaledOf(packet).length).toBeGreaterThan(0);
    for (const drawing of scaledOf(packet)) expect(drawings).toContain(drawing);
  });

  it.each(SINGLE)("of seat $seat print as that kit's table and gauge do", async ({ seat, slug }) => {
    const one = await readPdf(join(dist, CLASS, `seat-${seat}/packet-a4.pdf`));
    const other = await readPdf(join(own, `kits/${slug}/packet-a4.pdf`));
    const gauges = (pdf: typeof one) =>
      pdf.pages
        .filter(({ text }) => text.includes("Scoring gauge, true scale"))
        .map((page) => page.outlines.map((outline) => outline.box));
    expect(gauges(one).length).toBeGreaterThan(0);
    expect(gauges(one)).toEqual(gauges(other));
    const short = await readPdf(join(own, `kits/${slug}/table-compact-a4.pdf`));
    const checks = (pdf: typeof one) => pdf.pages.flatMap(({ text }) => text.match(/Check: [^.]*\./g) ?? []).sort();
    expect(checks(one)).toEqual(checks(short));
    expect(one.pages.length).toBeLessThan(other.pages.length / 2);
  });

  it("are there for every seat that fits, and none for the other", () => {
    for (const seat of FITTING)
      for (const file of ["index.html", "packet-a4.pdf", "pattern.json", "front.svg"])
        expect(statSync(join(dist, CLASS, `seat-${seat}`, file)).size).toBeGreaterThan(500);
    expect(readdirSync(join(dist, CLASS, "seat-6"))).toEqual(["index.html"]);
  });

  it("print in seat order as one file, each from a front side", async () => {
    const merged = await readPdf(join(dist, PRIVATE, "all-seats-a4.pdf"));
    let at = 0;
    for (const seat of FITTING) {
      const own = await readPdf(join(dist, CLASS, `seat-${seat}/packet-a4.pdf`));
      expect(at % 2).toBe(0);
      expect(merged.pages.slice(at, at + own.pages.length).map((page) => page.text)).toEqual(
        own.pages.map((page) => page.text),
      );
      at += own.pages.length + (own.pages.length % 2);
    }
    expect(merged.pages).toHaveLength(at);
  });
});

describe("what is printed of a class", () => {
  const count = async (path: string): Promise<number> => (await readPdf(join(dist, path))).pages.length;

  it("comes in two as well: what is read from front sides, and what is cut out", async () => {
    let [reading, cutting] = [0, 0];
    for (const seat of FITTING) {
      const html = read(`${CLASS}/seat-${seat}/packet/index.html`);
      const sheets = html.split('class="sheet true-scale"').length - 1;
      expect(sheets).toBeGreaterThan(0);
      const pages = (await count(`${CLASS}/seat-${seat}/packet-a4.pdf`)) - sheets;
      reading += pages + (pages % 2);
      cutting += sheets;
    }
    expect(await count(`${PRIVATE}/to-read-a4.pdf`)).toBe(reading);
    expect(await count(`${PRIVATE}/to-cut-out-a4.pdf`)).toBe(cutting);
  });

  it("stands in the print plan as the files count, and in its PDF", async () => {
    const html = read(`${PRIVATE}/print-plan/index.html`);
    const [printed] = (await readPdf(join(dist, PRIVATE, "print-plan.pdf"))).pages;
    for (const file of ["teacher", "to-read-a4", "to-cut-out-a4"]) {
      const pages = await count(`${PRIVATE}/${file}.pdf`);
      expect(new RegExp(`${file}\\.pdf<[\\s\\S]*?<td>1 ×</td><td>(\\d+)</td>`).exec(html)?.[1]).toBe(String(pages));
      expect(printed!.text).toContain(`${file}.pdf`);
    }
  });

  it("has its cut sheets at true size, a page each", async () => {
    const { pages } = await readPdf(join(dist, PRIVATE, "cut-sheets.pdf"));
    const sheets = readdirSync(join(dist, PRIVATE, "cut")).filter((name) => name.endsWith("-mm.svg"));
    expect(pages).toHaveLength(sheets.length);
    expect(pages.every(({ images, outlines }) => images === 0 && outlines.length > 4)).toBe(true);
  });
});

describe("the build", () => {
  it("lists the seat that does not fit with what would help, and goes on", () => {
    expect(stderr).toMatch(/winter-evenings, seat 6: harbour-moon does not fit its book\. .*130 mm/);
    expect(stderr).toMatch(/^ {2}- Choose Little Gull instead\. Make the picture \d+\smm tall\.$/m);
    expect(stderr).not.toContain("Set this seat’s height to");
    expect(stderr.match(/does not fit its book/g)).toHaveLength(1);
  });

  it("stops at it where that is asked, and leaves dist as it was", () => {
    const project = makeProject({ classes: true });
    try {
      project.write("dist/index.html", "as it was");
      const { code, stderr: said } = project.build({}, ["--stop-at-misfit"]);
      expect(code).toBe(1);
      expect(said).toMatch(/seat 6: harbour-moon does not fit[\s\S]*Nothing was built/);
      expect(readdirSync(join(project.folder, "dist"))).toEqual(["index.html"]);
    } finally {
      project.remove();
    }
  });
});

describe("the class's pages", () => {
  it("are sound HTML by an unrelated validator", async () => {
    expect(pages()).toHaveLength(1 + 8 + FITTING.length + 1 + 4);
    for (const page of pages()) expect(await htmlFaults(read(page), page)).toEqual([]);
  });

  it("have no link that leads nowhere", () => {
    const dead = pages().flatMap((page) =>
      [...read(page).matchAll(/ (?:href|src)="([^"]+)"/g)]
        .map(([, link]) => link!.replaceAll("&amp;", "&"))
        .filter((link) => !/^(https?:|#)/.test(link))
        .filter(
          (link) =>
            !statSync(join(dist, dirname(page), link.replace(/[?#].*/, "")), { throwIfNoEntry: false })?.isFile(),
        )
        .map((link) => `${page}: ${link}`),
    );
    expect(dead).toEqual([]);
  });

  it("ask no person's name anywhere", () => {
    for (const page of pages())
      expect(read(page)).not.toMatch(/<(input|textarea)[^>]*(name|id)="[^"]*(person|student|e-?mail|phone)/i);
    expect(read(`${CLASS}/index.html`)).toContain("Seats have numbers only");
  });

  it("carry the seat's book to the kit's page, bench and packet", () => {
    const html = read(`${CLASS}/index.html`).replaceAll("&amp;", "&");
    const address = "height=222&width=148&thick=31&leaves=248&last=486";
    expect(html).toContain(`href="../../kits/harbour-moon/index.html?${address}"`);
    expect(html).toContain(`href="../../kits/harbour-moon/bench/index.html?${address}"`);
    expect(html).toContain('href="seat-2/packet-a4.pdf"');
  });

  it("stand in the catalogue and the site map; a seat's pages are not for searches", () => {
    expect(read("index.html")).toContain(`href="${CLASS}/index.html"`);
    expect(read("sitemap.xml")).toContain(`<loc>${ADDRESS}${CLASS}/</loc>`);
    expect(read(`${CLASS}/seat-1/index.html`)).toContain('<meta name="robots" content="noindex">');
    expect(read("sitemap.xml")).not.toContain("seat-");
  });

  it("keep what is the teacher's in a folder of its own, which nothing published names", () => {
    const amounts = [...read(`${PRIVATE}/teacher/index.html`).matchAll(/€[\d.,]+\d/g)].map(([amount]) => amount);
    const short = [...read(`${PRIVATE}/teacher/index.html`).matchAll(/: ([^<]*\d[^<]*) short\./g)].map(
      ([, one]) => one!,
    );
    expect([amounts.length > 5, short.length > 0]).toEqual([true, true]);
    const published = readdirSync(dist, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(html|json|csv|xml|js|txt|svg)$/.test(entry.name))
      .map((entry) => relative(dist, join(entry.parentPath, entry.name)))
      .filter((path) => !path.startsWith("private/") && !path.startsWith("guide/"));
    expect(published).toContain(`${CLASS}/index.html`);
    for (const path of published) {
      const text = read(path);
      expect(text, path).not.toMatch(/private\/|teacher\.pdf|all-seats-/);
      if (!path.startsWith(CLASS)) continue;
      for (const figure of [...amounts, ...short]) expect(text, path).not.toContain(figure);
    }
    expect(read("private/index.html")).toContain('<meta name="robots" content="noindex">');
  });

  // Source: axe-core's rules after WCAG 2; 1.4.10 Reflow for 320 px.
  it.each([
    [1280, "light"],
    [390, "dark"],
    [320, "light"],
  ])("at %d px, %s: axe finds nothing and nothing scrolls sideways", async (width, scheme) => {
    const page = await device.newPage();
    await page.setViewport({ width, height: 900 });
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
    for (const path of ["index.html", "seat-2/index.html", "seat-6/index.html", "../../private/index.html"]) {
      await page.goto(`${host.site}${CLASS}/${path}`, { waitUntil: "networkidle0" });
      const found = await axeFindings(page);
      expect(found, path).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    await page.close();
  });

  it("load nothing from elsewhere and break no rule of their policy", async () => {
    const page = await device.newPage();
    const wrong: string[] = [];
    page.on("request", (request) => {
      if (!request.url().startsWith(host.site) && !/^(blob|data):/.test(request.url())) wrong.push(request.url());
    });
    page.on("requestfailed", (request) => wrong.push(`failed: ${request.url()}`));
    page.on("console", (message) => wrong.push(message.text()));
    page.on("pageerror", (error) => wrong.push(String(error)));
    for (const path of pages()) {
      await page.goto(host.site + path, { waitUntil: "load" });
      await settled(page);
    }
    await page.close();
    expect(wrong).toEqual([]);
  });

  it("say at once, by keyboard alone, whether a book fits", async () => {
    const page = await device.newPage();
    await page.goto(`${host.site}${CLASS}/index.html`, { waitUntil: "networkidle0" });
    await page.focus("#find-leafHeight");
    for (const figure of ["178", "108", "12.5", "112"]) {
      await page.keyboard.type(figure);
      await page.keyboard.press("Tab");
    }
    expect(await textOf(page, '[data-kit="little-gull"] .verdict', /./)).toMatch(/^Fits as it is/);
    const link = await page.$eval('[data-kit="little-gull"] h3 a', (one) => (one as HTMLAnchorElement).href);
    expect(link).toContain("kits/little-gull/index.html?height=178&width=108");
    await page.focus("#find-leafHeight");
    for (let i = 0; i < 3; i += 1) await page.keyboard.press("Backspace");
    await page.keyboard.type("104");
    // The gull is 125 mm high.
    expect(await textOf(page, '[data-kit="little-gull"] .verdict', /^Fits with a change/)).toMatch(
      /make the picture \d+\smm tall/i,
    );
    await page.close();
  });
});

describe("the row of a seat", () => {
  const line = (page: Page) => page.$eval("#row-line", (input) => (input as HTMLInputElement).value);

  it("is written of the book in the form, offered as a file, and comes back with the address", async () => {
    const page = await device.newPage();
    await page.goto(`${host.site}${CLASS}/index.html`, { waitUntil: "networkidle0" });
    expect(await line(page)).toBe("");
    const book = { leafHeight: "17,8 cm", leafWidth: "108", blockThickness: "12.5", leaves: "112" };
    const pages = { pageOneLeaf: "3", lastPage: "218", plates: "96:2; 120:4" };
    for (const [name, text] of Object.entries({ ...book, ...pages })) await page.type(`#find-${name}`, text);
    await page.select("#find-direction", "rtl");
    await page.select("#row-seat", "4");
    await page.select("#row-kit", "harbour-moon");
    const row = "4,harbour-moon,178,108,12.5,112,3,218,96x2.120x4,rtl,,";
    await page.waitForFunction(
      (wanted) => (document.querySelector("#row-line") as HTMLInputElement).value === wanted,
      {},
      row,
    );
    const saved = await page.$eval("[data-row-save]", async (link) => {
      let file: Blob | undefined;
      const make = URL.createObjectURL;
      URL.createObjectURL = (blob) => {
        file = blob as Blob;
        return make(blob);
      };
      link.addEventListener("click", (event) => event.preventDefault());
      (link as HTMLAnchorElement).click();
      return [(link as HTMLAnchorElement).download, await file!.text()];
    });
    expect(saved[0]).toBe("seat-4.csv");
    expect(saved[1]!.split("\n")[1]).toBe(row);
    await page.reload({ waitUntil: "networkidle0" });
    expect(await line(page)).toBe(row);
    await page.type("#find-plates", "four");
    await page.waitForFunction(() => (document.querySelector("#row-line") as HTMLInputElement).value === "");
    await page.close();
  });
});

describe("the codes of the seats", () => {
  // Source: jsqr, an unrelated reader of QR codes (ISO/IEC 18004).
  it("lead to the seats' pages, read from the cards", async () => {
    const html = read(`${PRIVATE}/teacher/index.html`);
    const codes = [...html.matchAll(/<svg class="seat-code"[\s\S]*?<\/svg>/g)].map(([svg]) => svg);
    expect(codes).toHaveLength(8);
    for (const [i, svg] of codes.entries()) {
      const plain = svg.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400" ');
      const { data, info } = await sharp(Buffer.from(plain)).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
      const seen = (jsqr as unknown as typeof jsqr.default)(new Uint8ClampedArray(data), info.width, info.height);
      expect(seen?.data).toBe(`${ADDRESS}${CLASS}/seat-${i + 1}/`);
    }
  });
});

describe("what is printed for the class", () => {
  it("is a teacher's packet with roster, list, costs, preparation, schedule, supervision, handouts and cards", async () => {
    const { pages: printed } = await readPdf(join(dist, PRIVATE, "teacher.pdf"));
    const text = printed.map((page) => page.text).join(" ");
    for (const words of [
      "Roster",
      "Shopping list",
      "Costs",
      "Preparation, in order",
      "Cut sheets of the class",
      "Schedule",
      "Who may need more time",
      "Supervision list",
      "Knife back, capped",
      "Cells counted back",
      "Harbour Moon: the steps",
      "Seat cards",
    ])
      expect(text).toContain(words);
    expect(text).toContain("Seat 6: Harbour Moon does not fit its book");
    for (const page of printed) expect([page.width, page.height].map(Math.round)).toEqual([210, 297]);
    const handouts = printed.filter((page) => page.text.includes("Handout ·"));
    expect(handouts).toHaveLength(3);
    const supervision = printed.find((page) => page.text.includes("Supervision list"))!;
    expect(supervision.text).toContain("Anyone carrying on at home");
  });

  // Read back with pdfjs-dist: the ruler's edge is whole centimetres long in true scale.
  it("is a measuring card with a ruler at true scale, twice", async () => {
    const {
      pages: [card, ...more],
    } = await readPdf(join(dist, CLASS, "measuring-card.pdf"));
    expect(more).toEqual([]);
    const edges = card!.outlines.filter((one) => one.paint === "stroke" && Math.abs(widthOf(one.box) - 180) < 0.5);
    expect(edges).toHaveLength(2);
    for (const { box } of edges) expect(Math.abs(widthOf(box) - 180)).toBeLessThan(0.02);
    for (const words of ["Leaf height", "Leaf width", "Thickness", "Leaves", "Last page", "Reading direction", "Seat"])
      expect(card!.text).toContain(words);
  });
});

describe("without a network", () => {
  it("a seat that was visited works on: its page, and the bench and pattern for its book", async () => {
    const { context, page } = await newReader({ browser }, { keeps: true });
    const go = (path: string): ReturnType<Page["goto"]> => page.goto(host.site + path, { waitUntil: "load" });
    await go("index.html");
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await go(`${CLASS}/seat-3/index.html`);
    await page.waitForFunction(
      async (paths: readonly string[]) => {
        const kept = await Promise.all(
          paths.map((path) => caches.match(new URL(path, location.href), { ignoreSearch: true })),
        );
        return kept.every((one) => one !== undefined);
      },
      { polling: 200 },
      [
        "./index.html",
        "front.svg",
        ...["bench/index.html", "kit-data.js"].map((path) => `../../../kits/little-gull/${path}`),
      ],
    );
    const bench = await page.$eval(".seat-do a", (link) => (link as HTMLAnchorElement).getAttribute("href")!);
    await host.stop();
    await go(`${CLASS}/seat-3/index.html`);
    expect(await page.$eval("h1", (title) => title.textContent)).toBe("Seat 3");
    await go(`${CLASS}/seat-3/${bench}`);
    expect(await page.title()).toContain("Little Gull");
    await context.close();
    await host.start();
  });
});
