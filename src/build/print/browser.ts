import { existsSync } from "node:fs";
import packaged from "@sparticuz/chromium";
import puppeteer, { type Browser } from "puppeteer";
import * as say from "../../words/messages.ts";
import { PrintError } from "./print-error.ts";

/** A browser that can print, and where it was found. */
export interface FoundBrowser {
  readonly path: string;
  readonly source: "setting" | "installed" | "downloaded" | "packaged";
}

const INSTALLED: Readonly<Record<string, readonly string[]>> = {
  linux: [
    "/usr/bin/google-chrome-stable",
    "/usr/bin/google-chrome",
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
  ],
};

/**
 * Finds a browser in this order: the setting LEAFLIGHT_BROWSER, an installed Chrome or Chromium, one downloaded by puppeteer,
 * the one packaged with @sparticuz/chromium (Linux on x64). @throws PrintError that says what to do where there is none.
 */
export async function findBrowser(
  environment: NodeJS.ProcessEnv = process.env,
  platform: string = process.platform,
): Promise<FoundBrowser> {
  const setting = environment.LEAFLIGHT_BROWSER;
  if (setting !== undefined && setting !== "") {
    if (existsSync(setting)) return { path: setting, source: "setting" };
    throw new PrintError(say.printNoSetting({ path: setting }));
  }
  const installed = (INSTALLED[platform] ?? []).find((path) => existsSync(path));
  if (installed) return { path: installed, source: "installed" };
  const downloaded = downloadedBrowser();
  if (downloaded) return { path: downloaded, source: "downloaded" };
  if (platform === "linux" && process.arch === "x64")
    return { path: await packaged.executablePath(), source: "packaged" };
  throw new PrintError(say.printNoBrowser());
}

function downloadedBrowser(): string | undefined {
  try {
    const path = puppeteer.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Of the packaged browser's own arguments: one process for everything, which fits the small machines that it is packaged for
 * but ends the browser with the first page of a second reader; and what takes a page's protection away.
 */
const UNWANTED = /^--(single-process|no-zygote|disable-web-security|allow-running-insecure-content)$/;

/** Starts a found browser for printing, without network traffic of its own. */
export function launchBrowser(found: FoundBrowser): Promise<Browser> {
  const quiet = [
    "--no-sandbox",
    "--disable-gpu",
    "--hide-scrollbars",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
    "--font-render-hinting=none",
  ];
  const args = found.source === "packaged" ? [...packaged.args.filter((arg) => !UNWANTED.test(arg)), ...quiet] : quiet;
  return puppeteer.launch({
    executablePath: found.path,
    args,
    headless: found.source === "packaged" ? "shell" : true,
    timeout: 60_000,
  });
}
