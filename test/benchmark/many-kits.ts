import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "puppeteer";
import type { Host } from "../site/serve.ts";

/** What the finder takes for a book among many kits. */
export interface FinderCost {
  /** Of the index, for one kit. */
  readonly indexBytes: number;
  /** Files of kit data that were asked for. */
  readonly asked: number;
  /** From the last key to the answer, ms. */
  readonly answered: number;
  /** The longest time that the page did not answer, ms. */
  readonly longest: number;
}

/** As many kits, made of those that the site has, under names of their own. */
const KITS = 100;

/** A middling phone, as against the machine that measures. */
const SLOWER = 4;

/** Lets a host show a catalogue of many kits in place of its own, and finds kits for a book in it on a slow phone. */
export async function findAmongMany(browser: Browser, host: Host, dist: string): Promise<FinderCost> {
  const catalogue = readFileSync(join(dist, "index.html"), "utf8");
  const cards = [...catalogue.matchAll(/\n<li class="card" data-kit="([^"]+)".*?\n<\/li>/gs)];
  const index = readFileSync(join(dist, "assets/finder-index.js"), "utf8");
  const nameOf = (i: number): string => `copy-${i}`;
  const slugOf = (i: number): string => cards[i % cards.length]![1]!;
  const copies = Array.from({ length: KITS }, (_, i) => i);
  const list = copies.map((i) =>
    cards[i % cards.length]![0].replace(`data-kit="${slugOf(i)}"`, `data-kit="${nameOf(i)}"`),
  );
  const outlines = copies.map((i) =>
    index
      .split("\n")
      .find((line) => line.includes(`"slug":"${slugOf(i)}"`))!
      .replace(/,$/, "")
      .replace(slugOf(i), nameOf(i)),
  );
  const many = `self.leaflightIndex=[\n${outlines.join(",\n")}\n];\n`;
  const first = catalogue.indexOf(cards[0]![0]);
  const last = cards.at(-1)!;
  const page = `${catalogue.slice(0, first)}${list.join("")}${catalogue.slice(last.index + last[0].length)}`;
  host.instead = (path) => {
    if (path === "many.html") return { status: 200, type: "text/html; charset=utf-8", body: page };
    if (path === "assets/finder-index.js") return { status: 200, type: "text/javascript", body: many };
    const copy = /^kits\/copy-(\d+)\/kit-data\.js$/.exec(path)?.[1];
    if (copy === undefined) return undefined;
    const slug = slugOf(Number(copy));
    const data = readFileSync(join(dist, "kits", slug, "kit-data.js"), "utf8");
    return { status: 200, type: "text/javascript", body: data.replaceAll(`"${slug}"`, `"${nameOf(Number(copy))}"`) };
  };
  try {
    const cost = await findOnPhone(browser, host);
    return { ...cost, indexBytes: Math.max(...outlines.map((line) => line.length + 2)) };
  } finally {
    host.instead = undefined;
  }
}

async function findOnPhone(browser: Browser, host: Host): Promise<Omit<FinderCost, "indexBytes">> {
  const device = await browser.createBrowserContext();
  const page = await device.newPage();
  await page.setViewport({ width: 390, height: 844, isMobile: true, hasTouch: true });
  await page.goto(`${host.site}many.html`, { waitUntil: "load" });
  await page.tap("[data-finder] summary");
  await page.evaluate(() => {
    const watch = { longest: 0 };
    Object.assign(self, { watch });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) watch.longest = Math.max(watch.longest, duration);
    }).observe({ type: "longtask" });
  });
  await page.emulateCPUThrottling(SLOWER);
  const before = host.asked.length;
  await page.evaluate(() => {
    const texts = { leafHeight: "205", leafWidth: "135", blockThickness: "20", leaves: "180" };
    for (const [name, text] of Object.entries(texts)) {
      const field = document.querySelector<HTMLInputElement>(`#find-${name}`)!;
      field.value = text;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }
  });
  const start = performance.now();
  await page.waitForFunction(
    () => /^\d+ kits: /.test(document.querySelector("[data-finder-result]")!.textContent ?? ""),
    {
      timeout: 300_000,
      polling: 20,
    },
  );
  const answered = performance.now() - start;
  const longest = await page.evaluate(() => (self as unknown as { watch: { longest: number } }).watch.longest);
  const asked = host.asked.slice(before).filter((path) => path.endsWith("kit-data.js")).length;
  await device.close();
  return { answered, longest, asked };
}
