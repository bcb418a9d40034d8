import { join } from "node:path";
import puppeteer, { type Browser, type BrowserContext } from "puppeteer";
import { afterAll, beforeAll, inject } from "vitest";
import { FOLDER } from "./address.ts";
import { MADE, PACKETS } from "./project.ts";
import { type Host, serve } from "./serve.ts";

/** A project that is built once for all suites; they read it and leave it as it is. */
export interface BuiltProject {
  readonly folder: string;
  /** What the build told. */
  readonly stdout: string;
  readonly stderr: string;
}

declare module "vitest" {
  interface ProvidedContext {
    /** All fixtures and their class, for the address `ADDRESS`. */
    readonly site: BuiltProject;
    /** Kits that only tests have, see own-kits.ts. */
    readonly ownKits: BuiltProject;
    /** Where the one browser listens. */
    readonly browser: string;
  }
}

/** How long a page may take for what a test waits for, on a busy machine, ms. */
const PATIENCE = 120_000;

/** A site on a host of its own, and a connection to the shared browser. */
export interface OpenedSite {
  readonly folder: string;
  readonly dist: string;
  readonly host: Host;
  readonly browser: Browser;
  /** A reader's device in it: what this suite keeps is not seen by others. */
  readonly device: BrowserContext;
  readonly close: () => Promise<void>;
}

/** What was made and printed for the shared site, for projects that need not make it again. */
export function keptByAll(): string[] {
  return [PACKETS, MADE].map((place) => join(inject("site").folder, place));
}

/** Opens the shared site, or the built project in `folder`. */
export async function openSite(folder: string = inject("site").folder): Promise<OpenedSite> {
  const dist = join(folder, "dist");
  const host = await serve(() => dist, FOLDER);
  const browser = await sharedBrowser();
  const device = await newDevice(browser);
  return {
    folder,
    dist,
    host,
    browser,
    device,
    close: async () => {
      await device.close();
      await browser.disconnect();
      await host.stop();
    },
  };
}

/** Opens the shared site for a file of tests, and closes it after them. */
export function sharedSite(): () => OpenedSite {
  let site: OpenedSite | undefined;
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => site?.close());
  return () => site!;
}

/** A connection to the one browser; whoever connects closes the pages that it opened, and disconnects. */
export function sharedBrowser(): Promise<Browser> {
  return puppeteer.connect({ browserWSEndpoint: inject("browser"), protocolTimeout: 300_000 });
}

/** What a device can do. */
export interface Abilities {
  /** Whether the site's worker keeps pages on it. To keep them takes a visit as much again, so only tests of what is kept ask for it. */
  readonly keeps: boolean;
}

/** A reader's device: nothing kept, nothing stored; its pages wait long. */
export async function newDevice(browser: Browser, { keeps }: Abilities = { keeps: false }): Promise<BrowserContext> {
  const device = await browser.createBrowserContext();
  const newPage = device.newPage.bind(device);
  device.newPage = async (...options) => {
    const page = await newPage(...options);
    page.setDefaultTimeout(PATIENCE);
    if (!keeps) await page.evaluateOnNewDocument(withoutWorkers);
    return page;
  };
  return device;
}

/** Runs in a page before its scripts: a browser as it is in a private window, without workers that keep pages. */
function withoutWorkers(): void {
  delete (Navigator.prototype as { serviceWorker?: unknown }).serviceWorker;
}
