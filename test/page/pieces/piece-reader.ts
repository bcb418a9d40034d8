import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "puppeteer";
import type { Maker } from "../bench/bench-reader.ts";

/** A piece as a device keeps it. */
export interface Record {
  readonly id: string;
  readonly kit: string;
  readonly number: number;
  readonly name: string;
  readonly notes: string;
  readonly address: string;
  readonly progress: { readonly ticks: readonly unknown[] };
}

/** What the device of a page keeps. */
export function recordsOf(page: Page): Promise<Record[]> {
  return page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve) => {
        request.onsuccess = () => resolve(request.result);
      });
    const base = await done(indexedDB.open("leaflight"));
    const records = await done(base.transaction("pieces").objectStore("pieces").getAll());
    base.close();
    return records as Record[];
  });
}

/** Writes a file of pieces as another device would save it. */
export function fileOf(folder: string, name: string, pieces: readonly Record[]): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify({ schema: "leaflight/pieces/1", pieces }));
  return path;
}

/** Chooses a file on the page of all pieces. */
export async function openFile(page: Page, path: string): Promise<void> {
  await page.waitForSelector("[data-pieces-files]:not([hidden])");
  const field = await page.$("[data-pieces-import]");
  await (field as unknown as { uploadFile: (path: string) => Promise<void> }).uploadFile(path);
}

/** Follows a link to a bench. */
export async function toBench({ page }: Maker, selector: string): Promise<void> {
  await Promise.all([page.waitForNavigation(), page.$eval(selector, (link) => (link as HTMLElement).click())]);
  await page.waitForFunction(() => document.querySelector("[data-count]")?.textContent !== "");
}

/** The lines of an element's children. */
export function linesOf(page: Page, selector: string): Promise<string[]> {
  return page.$$eval(selector, (all) => all.map((one) => one.textContent!.trim()));
}
