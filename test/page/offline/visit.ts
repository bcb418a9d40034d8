import type { Browser, BrowserContext, Page } from "puppeteer";
import type { Host } from "./serve.ts";

/** What the tests of the served site share: a built project, its host and a browser. */
export interface Served {
  readonly host: Host;
  readonly browser: Browser;
  /** Builds the project again after a change of its content. */
  readonly rebuild: () => void;
  readonly dist: string;
  /** Replaces text in a file of the project. */
  readonly change: (path: string, from: string, to: string) => void;
}

/** A reader with a device of her own: nothing kept, nothing stored. */
export async function newReader({ browser }: Served): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  await page.setViewport({ width: 1280, height: 900 });
  return { context, page };
}

/** Opens a page of the site. */
export function visit({ host }: Served, page: Page, path: string): Promise<unknown> {
  return page.goto(host.site + path, { waitUntil: "load" });
}

/** The text of an element once it matches. */
export async function textOf(page: Page, selector: string, wanted: RegExp = /./): Promise<string> {
  const handle = await page.waitForFunction(
    (where: string, source: string) => {
      const text = document.querySelector(where)?.textContent ?? "";
      return new RegExp(source).test(text) ? text : false;
    },
    { timeout: 30_000, polling: 50 },
    selector,
    wanted.source,
  );
  return (await handle.jsonValue()) as string;
}
