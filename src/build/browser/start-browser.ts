import puppeteer, { type Browser } from "puppeteer";
import * as say from "../../words/messages.ts";
import { headlessOf, noSandbox, QUIET, WALLED } from "./browser-arguments.ts";
import { BrowserError } from "./browser-error.ts";
import { BrowserProcess, type Needs } from "./browser-process.ts";
import type { FoundBrowser } from "./find-browser.ts";

/** How long a browser may take, ms. */
export interface Bounds {
  /** To start. */
  readonly start: number;
  /** To answer anything while it prints. */
  readonly answer: number;
}

/** Far longer than a slow and busy machine takes. */
export const BOUNDS: Bounds = { start: 45_000, answer: 90_000 };

/** A browser that runs. */
export interface StartedBrowser {
  readonly browser: Browser;
  /** The answer of the work, or why the browser will not give it. @throws BrowserError where it ended or does not answer */
  readonly guard: <T>(work: Promise<T>) => Promise<T>;
  readonly close: () => Promise<void>;
}

const SANDBOX = /sandbox|namespace|zygote/i;
const LIBRARY = /error while loading shared libraries/i;

/**
 * Starts a browser for printing, with its sandbox where the system allows it; `tell` hears where it does not. What the packaged
 * one lacks on a bare system it takes from its package. @throws BrowserError where it does not start in time
 */
export async function startBrowser(
  found: FoundBrowser,
  tell: (line: string) => void,
  bounds: Bounds = BOUNDS,
): Promise<StartedBrowser> {
  let needs: Needs = { sandbox: noSandbox() === undefined, libraries: false };
  if (!needs.sandbox) tell(say.printNoSandboxRoot());
  for (;;) {
    const child = new BrowserProcess(found.path, argumentsOf(found, needs), needs);
    try {
      return await connect(child, found, bounds);
    } catch (error) {
      await child.end();
      if (found.source === "packaged" && LIBRARY.test(child.said) && !needs.libraries) {
        needs = { ...needs, libraries: true };
      } else if (needs.sandbox && SANDBOX.test(child.said)) {
        needs = { ...needs, sandbox: false };
        tell(say.printNoSandbox());
      } else throw error;
    }
  }
}

function argumentsOf(found: FoundBrowser, { sandbox }: Needs): (profile: string) => string[] {
  return (profile) => [
    ...puppeteer.defaultArgs({
      headless: headlessOf(found),
      userDataDir: profile,
      args: [...QUIET, ...WALLED, ...(sandbox ? [] : ["--no-sandbox"])],
    }),
    "--remote-debugging-pipe",
  ];
}

async function connect(child: BrowserProcess, { path }: FoundBrowser, bounds: Bounds): Promise<StartedBrowser> {
  const seconds = bounds.start / 1000;
  const started = puppeteer.connect({ transport: child.pipe, protocolTimeout: bounds.answer, defaultViewport: null });
  const browser = await child.guard(started, bounds.start, {
    late: () => new BrowserError(say.printBrowserSilent({ path, seconds })),
    ended: (how) => new BrowserError(say.printBrowserEnded({ path, how })),
  });
  return {
    browser,
    guard: (work) =>
      child.guard(work, bounds.answer, {
        late: () => new BrowserError(say.printBrowserStuck({ path, seconds: bounds.answer / 1000 })),
        ended: (how) => new BrowserError(say.printBrowserDied({ path, how }), true),
      }),
    close: () => child.end(),
  };
}
