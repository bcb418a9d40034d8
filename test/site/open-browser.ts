import puppeteer, { type Browser } from "puppeteer";
import { headlessOf, QUIET } from "../../src/build/browser/browser-arguments.ts";
import { findBrowser } from "../../src/build/browser/find-browser.ts";

/** Draws the view in the round without a graphics card. */
const DRAWING = ["--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--ignore-gpu-blocklist"];

/** Opens the browser that prints as a reader's, at a port, so that several processes can use it; `more` are arguments of one test. */
export async function openBrowser(more: readonly string[] = []): Promise<Browser> {
  const found = await findBrowser();
  return puppeteer.launch({
    executablePath: found.path,
    headless: headlessOf(found),
    args: [...QUIET, "--no-sandbox", "--disable-gpu", ...DRAWING, ...more],
    timeout: 60_000,
  });
}
