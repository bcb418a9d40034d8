import type { BrowserContext, Page } from "puppeteer";
import { type Abilities, newDevice, type OpenedSite } from "./shared-site.ts";

/** A reader with a device of her own: nothing kept, nothing stored. */
export async function newReader(
  { browser }: Pick<OpenedSite, "browser">,
  abilities?: Abilities,
): Promise<{ context: BrowserContext; page: Page }> {
  const context = await newDevice(browser, abilities);
  const page = await context.newPage();
  await page.setViewport({ width: 1280, height: 900 });
  return { context, page };
}

/** Opens a page of the site. */
export function visit({ host }: Pick<OpenedSite, "host">, page: Page, path: string): Promise<unknown> {
  return page.goto(host.site + path, { waitUntil: "load" });
}

/** The text of an element once it matches. */
export async function textOf(page: Page, selector: string, wanted: RegExp = /./): Promise<string> {
  const handle = await page.waitForFunction(
    (where: string, source: string) => {
      const text = document.querySelector(where)?.textContent ?? "";
      return new RegExp(source).test(text) ? text : false;
    },
    { timeout: 120_000, polling: 50 },
    selector,
    wanted.source,
  );
  return (await handle.jsonValue()) as string;
}

/**
 * Waits until a page has done what a key or a press set off: nothing more was fetched, timers that were set before this one have
 * fired (the pages' longest wait is 200 ms), and what the page has its worker make has come. A slow machine takes longer, and no
 * part is left out.
 */
export function settled(page: Page): Promise<void> {
  return page.evaluate(async () => {
    const fetched = (): number => performance.getEntriesByType("resource").length;
    const last = (mark: string): number => performance.getEntriesByName(mark).at(-1)?.startTime ?? 0;
    for (let before = -1; before !== fetched() || last("fit filled") < last("fit asked"); ) {
      before = fetched();
      await new Promise((resolve) => setTimeout(resolve, 250));
    }
  });
}
