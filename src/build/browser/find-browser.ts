import { existsSync } from "node:fs";
import puppeteer from "puppeteer";
import * as say from "../../words/messages.ts";
import { BrowserError } from "./browser-error.ts";
import { PACKAGED_VERSION, unpackBrowser } from "./packaged.ts";
import { statedVersion } from "./stated-version.ts";

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

/** What of a machine decides which browser is found. */
export interface Machine {
  readonly platform: string;
  readonly architecture: string;
  readonly exists: (path: string) => boolean;
  /** Where puppeteer would have put the browser that it downloads. @throws Error where it knows of none */
  readonly downloaded: () => string;
  /** Unpacks the packaged browser; gives its path. */
  readonly unpack: () => Promise<string>;
}

const THIS_MACHINE: Machine = {
  platform: process.platform,
  architecture: process.arch,
  exists: existsSync,
  downloaded: () => puppeteer.executablePath(),
  unpack: unpackBrowser,
};

/**
 * Finds a browser in this order: the setting LEAFLIGHT_BROWSER, an installed Chrome or Chromium, one downloaded by puppeteer,
 * the one packaged with @sparticuz/chromium (Linux on x64). @throws BrowserError that says what to do where there is none.
 */
export async function findBrowser(
  environment: NodeJS.ProcessEnv = process.env,
  machine: Machine = THIS_MACHINE,
): Promise<FoundBrowser> {
  const other = otherBrowser(environment, machine);
  return other ?? { path: await machine.unpack(), source: "packaged" };
}

/** The version of the browser that would be found, without starting it: another may print other bytes. @throws BrowserError where there is none */
export async function browserVersion(): Promise<string> {
  const other = otherBrowser(process.env, THIS_MACHINE);
  return other ? await statedVersion(other.path) : `packaged ${PACKAGED_VERSION}`;
}

/** The browser that is not packaged; undefined where the packaged one is to be taken. */
function otherBrowser(environment: NodeJS.ProcessEnv, machine: Machine): FoundBrowser | undefined {
  const { platform, architecture, exists } = machine;
  const setting = environment.LEAFLIGHT_BROWSER;
  if (setting !== undefined && setting !== "") {
    if (exists(setting)) return { path: setting, source: "setting" };
    throw new BrowserError(say.printNoSetting({ path: setting }));
  }
  const installed = (INSTALLED[platform] ?? []).find(exists);
  if (installed) return { path: installed, source: "installed" };
  const downloaded = downloadedBrowser(machine);
  if (downloaded) return { path: downloaded, source: "downloaded" };
  if (platform === "linux" && architecture === "x64") return undefined;
  throw new BrowserError(say.printNoBrowser());
}

function downloadedBrowser({ exists, downloaded }: Machine): string | undefined {
  try {
    const path = downloaded();
    return exists(path) ? path : undefined;
  } catch {
    return undefined;
  }
}
