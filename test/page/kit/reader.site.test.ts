import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { seenBothWays } from "../../../src/core/makeability/silhouette-seen.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import { computeCorner } from "../../../src/core/pattern/compute-corner.ts";
import { countsOf, effortOf } from "../../../src/core/plan/effort.ts";
import { fromAddress, toAddress } from "../../../src/core/refit/address.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { cutFile } from "../../../src/output/cut/cut-files.ts";
import { patternCsv } from "../../../src/output/data/pattern-csv.ts";
import { patternJson } from "../../../src/output/data/pattern-json.ts";
import { seenWords } from "../../../src/words/seen.ts";
import { patternOf } from "../../core/pattern/computed.ts";
import { readKit } from "../../input/kit/kit-folders.ts";
import { fc } from "../../seed.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { newReader, textOf, visit } from "../../site/visit.ts";

const SLUG = "little-gull";
let site: OpenedSite;

beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site?.close());

async function open(path: string): Promise<Page> {
  const page = await site.device.newPage();
  await page.goto(`${site.host.site}${path}`, { waitUntil: "load" });
  return page;
}

/** Leaf, marks and folds of every row of the page's table, in millimetres. */
function tableOf(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("table.pattern tbody tr")].map((row) => {
      const marks = [...row.querySelectorAll("td:nth-child(4) > i")].map((mark) => mark.textContent!.trim()).join(" ");
      const folds = row.querySelector("td:nth-child(5)")!.textContent!.trim();
      return `${row.querySelector("th")!.textContent} | ${marks} | ${folds}`;
    }),
  );
}

/** Writes over a field's text. Selected by script: a line that comes late may move the field away from under a pointer. */
async function write(page: Page, name: string, text: string): Promise<void> {
  await page.$eval(`#fit-${name}`, (field) => (field as HTMLInputElement).select());
  await page.type(`#fit-${name}`, text);
}

/** What the build publishes for a kit, or nothing where it would stop. */
function buildText(kit: Kit): string | undefined {
  const result = computePattern(kit);
  if (!result.fits) return undefined;
  const { pattern, findings } = result;
  const counts = countsOf(pattern);
  return patternJson(kit, pattern, findings, suppliesOf(kit, pattern, counts), effortOf(counts, kit.rates));
}

describe("a kit page with a reader's book in its address", () => {
  it.each([
    "leaves=128&thick=14.2&last=250",
    "height=190&width=118&head=30&picture=110&border=4_10",
    "read=rtl&step=0.5&folds=single&depths=10_21",
  ])("shows the pattern that the modules compute for it: %s", async (address) => {
    const page = await open(`kits/${SLUG}/index.html?${address}`);
    await page.waitForFunction(() =>
      document.querySelector("[data-refit-state]")!.textContent!.includes("worked out for your book"),
    );
    const { kit } = readKit(join(site.folder, "content/kits", SLUG), site.folder);
    const pattern = patternOf(refitKit(kit, fromAddress(new URLSearchParams(address), kit).refit));
    const decimals = pattern.fit.markStep === 1 ? 0 : 1;
    const expected = pattern.leaves.map((leaf) => {
      const marks = leaf.cuts.map((cut) => `${cut.at.toFixed(decimals)}›${Number(cut.depth.toFixed(1))}`).join(" ");
      return `${leaf.leaf} | ${marks} | ${leaf.spans.map((span) => span.level).join(" · ")}`;
    });
    await expect.poll(() => tableOf(page), { timeout: 60_000 }).toEqual(expected);
    await page.close();
  });

  // Whole numbers and half millimetres, as rulers give them; the page's own file is compared with the build's text, byte for byte.
  const random = fc.record({
    leafHeight: fc.integer({ min: 240, max: 480 }).map((half) => half / 2),
    leafWidth: fc.integer({ min: 120, max: 320 }).map((half) => half / 2),
    leaves: fc.integer({ min: 60, max: 320 }),
    caliper: fc.integer({ min: 8, max: 14 }),
    pageOneLeaf: fc.integer({ min: 1, max: 7 }).map(leafNumber),
    borderLeaves: fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 })),
    direction: fc.constantFrom("ltr" as const, "rtl" as const),
    foldStyle: fc.constantFrom("single" as const, "stepped" as const),
  });
  const books = fc
    .sample(random, { numRuns: 12 })
    .map(({ caliper, ...book }): Refit => ({ ...book, blockThickness: Math.round(book.leaves * caliper) / 100 }));

  it.each(books.map((book) => [toAddress(book), book] as const))(
    "gives the build's own pattern.json for a random book: %s",
    async (address, book) => {
      const { kit } = readKit(join(site.folder, "content/kits", SLUG), site.folder);
      const wanted = buildText(refitKit(kit, book));
      const fitted = await open(`kits/${SLUG}/index.html?${address}`);
      if (wanted === undefined) {
        await fitted.waitForSelector(".refit-state.wrong");
      } else {
        await fitted.waitForFunction(() =>
          document.querySelector("[data-refit-state]")!.textContent!.includes("worked out for your book"),
        );
        const given = fitted.evaluate(
          () =>
            new Promise<string>((resolve) => {
              const make = URL.createObjectURL.bind(URL);
              URL.createObjectURL = (blob: Blob) => {
                if (blob.type === "text/plain") blob.text().then(resolve);
                return make(blob);
              };
              document.querySelector<HTMLAnchorElement>('a[href="pattern.json"]')!.click();
            }),
        );
        expect(await given).toBe(wanted);
      }
      await fitted.close();
    },
  );

  it("has random books that fit and some that do not", () => {
    const { kit } = readKit(join(site.folder, "content/kits", SLUG), site.folder);
    const fitting = books.filter((book) => buildText(refitKit(kit, book)) !== undefined).length;
    expect(fitting).toBeGreaterThan(5);
    expect(fitting).toBeLessThan(books.length);
  });

  it("says why a book does not fit and takes an offer with one press", async () => {
    const page = await open(`kits/${SLUG}/index.html?height=110`);
    await page.waitForSelector(".refit-state.wrong button");
    // Beside it stands how the book would come out.
    await page.waitForFunction(() => {
      const picture = document.querySelector<HTMLImageElement>(".refit-state.wrong li img");
      return picture?.complete && picture.naturalWidth > 0;
    });
    await page.click(".refit-state.wrong button");
    await page.waitForFunction(() =>
      document.querySelector("[data-refit-state]")!.textContent!.includes("worked out for your book"),
    );
    // 8 mm stay free at head and tail of a leaf of 110.
    expect(new URL(page.url()).searchParams.get("picture")).toBe("94");
    await page.close();
  });

  it("keeps the last book that fitted while a figure cannot be used or does not fit, and says so", async () => {
    const page = await open(`kits/${SLUG}/index.html?leaves=128&thick=14.2&last=250`);
    const links = () =>
      page.$$eval("a[data-to]", (all) => all.map((one) => one.getAttribute("href")!.replace(/^[^?]*/, "")));
    const isHeld = () => page.$eval("[data-held]", (note) => !(note as HTMLElement).hidden);
    await page.waitForFunction(() => !document.querySelector<HTMLElement>("[data-my-packet]")!.hidden);
    expect(await isHeld()).toBe(false);
    for (const [height, said] of [
      ["1", "Correct it"],
      ["45", "does not fit"],
    ] as const) {
      await write(page, "leafHeight", height);
      await page.waitForFunction(
        (text) => document.querySelector("main.held .refit-state.wrong")?.textContent?.includes(text),
        {},
        said,
      );
      expect(new Set(await links())).toEqual(new Set(["?thick=14.2&leaves=128&last=250"]));
      expect(await isHeld()).toBe(true);
      // It stands closed with what else there is to download.
      await page.$eval('a[href="pattern.csv"]', (link) => (link as HTMLElement).click());
      await page.waitForFunction(() =>
        document.querySelector("[data-refit-state]")!.textContent!.endsWith("Files are made once the book fits."),
      );
    }
    await write(page, "leafHeight", "180");
    await page.waitForSelector("main:not(.held)");
    expect(await isHeld()).toBe(false);
    await page.close();
  });

  it.each(["host", "disk"])("gives the files of the reader's book, from a %s", async (from) => {
    const page = await site.device.newPage();
    const base = from === "host" ? site.host.site : `${pathToFileURL(join(site.folder, "dist")).href}/`;
    await page.goto(`${base}kits/${SLUG}/index.html?leaves=128&thick=14.2&last=250`, { waitUntil: "load" });
    await page.waitForFunction(() =>
      document.querySelector("[data-refit-state]")!.textContent!.includes("worked out for your book"),
    );
    const text = await page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          URL.createObjectURL = (blob) => {
            if (blob instanceof Blob && blob.type === "text/plain") resolve(blob.text());
            return "#";
          };
          document.querySelector<HTMLElement>('a[href="pattern.csv"]')!.click();
        }),
    );
    const { kit } = readKit(join(site.folder, "content/kits", SLUG), site.folder);
    const { refit } = fromAddress(new URLSearchParams("leaves=128&thick=14.2&last=250"), kit);
    expect(text).toBe(patternCsv(patternOf(refitKit(kit, refit))));
    await page.close();
  });

  it.each(["host", "disk"])("makes the kit's own cut files in forms that no build wrote, from a %s", async (from) => {
    const moon = "harbour-moon";
    const { kit, pattern } = readKit(join(site.folder, "content/kits", moon), site.folder);
    const page = await site.device.newPage();
    const base = from === "host" ? site.host.site : `${pathToFileURL(join(site.folder, "dist")).href}/`;
    await page.goto(`${base}kits/${moon}/index.html`, { waitUntil: "load" });
    const give = (file: string) =>
      page.evaluate(
        (address) =>
          new Promise<string>((resolve) => {
            URL.createObjectURL = (blob) => {
              if (blob instanceof Blob && blob.type === "text/plain") resolve(blob.text());
              return "#";
            };
            document.querySelector<HTMLElement>(`a[href="cut/${address}"]`)!.click();
          }),
        file,
      );
    for (const file of ["door-inch.dxf", "motif-gull-72dpi.svg", "sheet-letter-card-1-mm.dxf"]) {
      expect(existsSync(join(site.folder, "dist/kits", moon, "cut", file))).toBe(false);
      expect(await give(file)).toBe(cutFile(kit, pattern, file)!.text);
    }
    await page.close();
  });

  it("offers without scripts the cut files that are there, and no others", async () => {
    const page = await site.device.newPage();
    await page.setJavaScriptEnabled(false);
    await page.goto(`${site.host.site}kits/harbour-moon/index.html#light`, { waitUntil: "load" });
    const offered = await page.$$eval('a[href^="cut/"]', (links) =>
      links
        .filter((link) => getComputedStyle(link.parentElement!).display !== "none")
        .map((link) => link.getAttribute("href")!),
    );
    await page.close();
    const there = readdirSync(join(site.folder, "dist/kits/harbour-moon/cut")).map((name) => `cut/${name}`);
    expect(offered.toSorted()).toEqual(there.sort());
  });

  it("follows the choice of units with panel, drawings, supplies and reasons", async () => {
    const page = await open(`kits/${SLUG}/index.html?height=110`);
    await page.click("#units-in");
    await page.waitForFunction(() =>
      document.querySelector(".refit-state.wrong button")?.textContent?.includes("\u00a0in "),
    );
    expect(await page.$eval(".refit-state", (state) => state.textContent)).not.toMatch(/\d\smm/);
    expect(await page.$eval("#fit-leafHeight", (input) => (input as HTMLInputElement).value)).toBe("4 11/32 in");
    await page.click(".refit-state.wrong button");
    await page.waitForFunction(() =>
      document.querySelector("[data-refit-state]")!.textContent!.includes("worked out for your book"),
    );
    await page.waitForFunction(() =>
      document.querySelector('[data-part="supplies"]')!.textContent!.includes("\u00a0in tall"),
    );
    for (const part of ["supplies", "steps"]) {
      const seen = await page.$eval(
        `[data-part="${part}"] svg, [data-part="${part}"] .supplies`,
        (one) => one.textContent,
      );
      expect(seen).not.toMatch(/\d\smm/);
    }
    await page.close();
  });

  it("counts what was typed, also where the kit has the same figure", async () => {
    const page = await open(`kits/${SLUG}/index.html`);
    // 130 leaves alone would be numbered to the end; the kit's own last page is 218.
    await write(page, "leaves", "130");
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#fit-lastPage")!.value === "256");
    await write(page, "lastPage", "218");
    await page.waitForFunction(() => location.search === "?leaves=130&last=218");
    await page.reload({ waitUntil: "networkidle0" });
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#fit-lastPage")!.value === "218");
    await write(page, "leafHeight", "180");
    await page.waitForFunction(() => location.search.includes("last=218"));
    await page.close();
  });

  it("says beside that it fits what a maker must look at: pages counted as leaves, too coarse, moved picture", async () => {
    const said = async (address: string): Promise<string> => {
      const page = await open(`kits/${SLUG}/index.html?${address}`);
      await page.waitForFunction(() =>
        document.querySelector("[data-refit-state]")!.textContent!.includes("worked out for your book"),
      );
      const text = await page.$eval("[data-refit-state]", (state) => state.textContent!);
      await page.close();
      return text;
    };
    expect(await said("leaves=224&last=218")).toMatch(
      /^It can be made, but check this first\..*after page 218 would carry no number.*the book has 112 leaves/,
    );
    expect(await said("leaves=36&thick=4&last=68&border=4_4")).toMatch(
      /^It can be made, but it will come out poorly\..*Only 28 leaves carry the picture/,
    );
    expect(await said("height=140")).toMatch(/picture now begins .* from the head/);
    // In the inches that were chosen above, to the 32nd: 28 mm are 35.3, and 178 mm less 28 and 125 are 25, 31.5 of them.
    expect(await said("thick=12.6")).toMatch(
      /^It fits well\. .*1 3\/32\sin stay free at the head and 31\/32\sin at the tail\. .* takes about \d/,
    );
  });

  it("draws the reader's own measurements in the figure that says how to measure", async () => {
    const page = await open(`kits/${SLUG}/index.html?leaves=128&thick=14`);
    await page.waitForFunction(() => document.querySelector(".measure")!.textContent!.includes("128 leaves"));
    await page.close();
  });

  it.each([
    ["12,9 mm", 12.9],
    ["1.29 cm", 12.9],
    ["1/2 inches", 12.7],
    ["0-1/2 in", 12.7],
  ])("reads a thickness as people write it: %s", async (text, mm) => {
    const page = await open(`kits/${SLUG}/index.html`);
    await write(page, "blockThickness", text);
    const stated = () => page.evaluate(() => new URLSearchParams(location.search).get("thick"));
    await expect.poll(stated, { timeout: 20_000 }).toBe(String(mm));
    await page.close();
  });

  it("marks a text that is no length and says what is allowed", async () => {
    const page = await open(`kits/${SLUG}/index.html`);
    await page.type("#fit-leafHeight", " ft");
    await page.waitForSelector('#fit-leafHeight[aria-invalid="true"]');
    expect(await page.$eval("#fit-leafHeight-help", (help) => help.textContent)).toContain("Allowed:");
    await page.close();
  });
});

describe("the bench", () => {
  it("goes on by key, keeps its ticks through a reload, and keeps another book apart", async () => {
    const page = await open(`kits/${SLUG}/bench/index.html`);
    const count = async (): Promise<string> => /(\d+) done/.exec(await textOf(page, "body", /\d+ done/))![1]!;
    expect(await count()).toBe("0");
    // Preparing and score lines, then leaves.
    for (let i = 0; i < 12; i += 1) {
      await page.keyboard.press("Enter");
      await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
    }
    const done = await count();
    expect(Number(done)).toBeGreaterThanOrEqual(5);
    await page.reload({ waitUntil: "networkidle0" });
    expect(await count()).toBe(done);
    await page.goto(`${site.host.site}kits/${SLUG}/bench/index.html?leaves=128&thick=14`, {
      waitUntil: "networkidle0",
    });
    expect(await count()).toBe("0");
    await page.close();
  });
});

describe("a book whose corners a reader folds", () => {
  it("is compared with the drawing at a press, as the build compares it", async () => {
    const page = await open(`kits/${SLUG}/index.html?leaves=120&thick=13&folds=corner`);
    await textOf(page, "[data-refit-state]", /worked out for your book/);
    await (await page.waitForSelector("[data-refit-match]", { visible: true }))!.click();
    const told = await textOf(page, "[data-refit-state]", /match .*% of the drawn outline/);
    const own = readKit(join(site.folder, "content/kits", SLUG), site.folder).kit;
    const kit = refitKit(own, fromAddress(new URLSearchParams(new URL(page.url()).search), own).refit);
    const made = computeCorner(kit);
    if (!made.fits) throw new Error(made.finding.kind);
    expect(told).toContain(seenWords(seenBothWays(kit, made.pattern)!));
    expect(told).not.toContain("Comparing");
    await page.click("[data-refit-match]");
    await page.waitForFunction(() => !document.querySelector("[data-refit-state]")!.textContent!.includes("Comparing"));
    expect(await textOf(page, "[data-refit-state]", /drawn outline/)).toBe(told);
    expect(await page.$eval('.contents a[href="#tacks"]', (link) => link.checkVisibility())).toBe(false);
    await page.close();
  });

  it("is not asked for where leaves are cut, nor of the kit's own book", async () => {
    const page = await open(`kits/${SLUG}/index.html?leaves=120&thick=13`);
    await textOf(page, "[data-refit-state]", /worked out for your book/);
    expect(await page.$eval("[data-refit-match]", (button) => (button as HTMLElement).hidden)).toBe(true);
    expect(await page.$eval('.contents a[href="#tacks"]', (link) => link.checkVisibility())).toBe(true);
    await page.close();
  });
});

describe("without a network", () => {
  it("shows a kit that was visited with its bench and pattern, and says so of one that was not", async () => {
    const { context, page } = await newReader(site, { keeps: true });
    await visit(site, page, "index.html");
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.goto(`${site.host.site}kits/${SLUG}/index.html`, { waitUntil: "networkidle0" });
    await textOf(page, "[data-kept]", /works offline/);
    await page.click(".kept button");
    await textOf(page, "[data-kept]", /All of this kit/);
    await site.host.stop();
    const text = async (path: string): Promise<string> => {
      await page.goto(`${site.host.site}${path}`, { waitUntil: "load" });
      return page.evaluate(() => document.body.innerText);
    };
    expect(await text(`kits/${SLUG}/index.html`)).toContain("Little Gull");
    expect(await text(`kits/${SLUG}/pattern.json`)).toContain("leaflight/pattern/2");
    await page.goto(`${site.host.site}kits/${SLUG}/bench/index.html`, { waitUntil: "load" });
    expect(await textOf(page, "[data-bench]:not([hidden])", /\d+ done/)).toContain("done");
    expect(await text("kits/never-seen/index.html")).toContain("Not on this device");
    await site.host.start();
    await context.close();
  });
});
