import type { Browser } from "puppeteer";
import { timeTurns } from "../../page/turns.ts";
import { FOLDER } from "../../site/address.ts";
import { openBrowser } from "../../site/open-browser.ts";
import { serve } from "../../site/serve.ts";
import type { Figure } from "../figure.ts";
import type { FixturesSite } from "../fixtures-site.ts";
import { middleAndMost } from "../numbers.ts";
import type { Scale } from "../scale.ts";
import { TYPED } from "../scenes.ts";
import { typeFigures } from "../typing.ts";

/** Tasks shorter than this are not told, ms (W3C Long Tasks API). */
const LONG_TASK = 50;

/** The whole answer at a key, on this machine and on one that is made slower; a slower device's workers are as fast as this one's. */
export async function measurePage({ quick }: Scale, fixtures: FixturesSite): Promise<Figure[]> {
  const dist = await fixtures.dist();
  const host = await serve(() => dist, FOLDER);
  const browser = await openBrowser();
  try {
    const figures: Figure[] = [];
    for (const slower of [1, 4] as const) {
      const { answered, longest, turn } = await typeOn(browser, host.site, slower, quick ? 2 : 8);
      figures.push({ line: `key-${slower}`, value: answered, yardstick: turn });
      figures.push({ line: `task-${slower}`, value: longest, yardstick: turn });
    }
    return figures;
  } finally {
    await browser.close();
    await host.stop();
  }
}

interface Typed {
  /** Middle time from a key to the whole answer, ms. */
  readonly answered: number;
  /** The longest task, ms; at least as long as those that a browser tells of. */
  readonly longest: number;
  /** A turn of a plain loop in the page, ms. */
  readonly turn: number;
}

async function typeOn(browser: Browser, site: string, slower: number, rounds: number): Promise<Typed> {
  const { address, fields } = TYPED[0]!;
  const page = await browser.newPage();
  await page.goto(`${site}${address}`, { waitUntil: "networkidle0" });
  await page.emulateCPUThrottling(slower);
  const turns = await page.evaluate(timeTurns);
  await page.evaluate(watchTasks);
  const times = await typeFigures(page, fields, rounds);
  const longest = await page.evaluate(() => (self as unknown as { longestTask: number }).longestTask);
  await page.close();
  return {
    answered: middleAndMost(times.map(({ settled }) => settled)).median,
    longest: Math.max(LONG_TASK, longest),
    turn: middleAndMost(turns).median,
  };
}

/** Runs in the page: notes the longest time that it answered nothing. */
function watchTasks(): void {
  const noted = { longestTask: 0 };
  Object.assign(self, noted);
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries())
      Object.assign(self, { longestTask: Math.max((self as unknown as typeof noted).longestTask, duration) });
  }).observe({ type: "longtask" });
}
