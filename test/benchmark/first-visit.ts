import { existsSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "puppeteer";
import { pathIn } from "../../src/page/offline/paths.ts";
import { settled } from "../site/visit.ts";

/** What a host sends packed, as nearly all do. */
const TEXTS = [".html", ".css", ".js", ".json", ".svg", ".csv", ".xml", ".webmanifest"];

/** Bytes that a file of the site takes on the line. */
function sentBytes(dist: string, path: string): number {
  const file = join(dist, path);
  if (!existsSync(file)) return 0;
  const contents = readFileSync(file);
  return TEXTS.includes(extname(path)) ? gzipSync(contents).length : contents.length;
}

/** The files that a page fetches by itself for a reader who was never here, with the bytes of each. What the site's worker keeps afterwards is not in it. */
export async function firstVisit(
  browser: Browser,
  { site, dist }: { readonly site: string; readonly dist: string },
  path: string,
): Promise<ReadonlyMap<string, number>> {
  const device = await browser.createBrowserContext();
  const page = await device.newPage();
  await page.setViewport({ width: 1280, height: 900 });
  const asked = new Set<string>();
  page.on("requestfinished", (request) => {
    const file = request.url().startsWith("http") ? pathIn(site, request.url()) : undefined;
    if (file !== undefined) asked.add(file);
  });
  await page.goto(site + path, { waitUntil: "load" });
  await settled(page);
  await device.close();
  return new Map([...asked].map((file) => [file, sentBytes(dist, file)]));
}

export function sumOf(files: ReadonlyMap<string, number>): number {
  return [...files.values()].reduce((sum, bytes) => sum + bytes, 0);
}

/** What a device keeps of the site, as it lies there. */
export async function keptBytes(page: Page): Promise<number> {
  return page.evaluate(async () => {
    let sum = 0;
    for (const name of await caches.keys())
      for (const kept of await (await caches.open(name)).matchAll()) sum += (await kept.arrayBuffer()).byteLength;
    return sum;
  });
}
