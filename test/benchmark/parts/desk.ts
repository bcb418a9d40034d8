import type { KeyInput, Page } from "puppeteer";
import { atRest, layOutKit } from "../../page/desk/table/laid-kit.ts";
import { timeTurns } from "../../page/turns.ts";
import { openBrowser } from "../../site/open-browser.ts";
import type { Figure } from "../figure.ts";
import { middleAndMost } from "../numbers.ts";
import type { Scale } from "../scale.ts";

/** Handles of a lit kit of 204 leaves with a window, and the keys that move each to and fro. */
const MOVED = {
  height: ["ArrowUp", "ArrowDown"],
  head: ["ArrowUp", "ArrowDown"],
  depth2: ["ArrowLeft", "ArrowRight"],
} as const satisfies Readonly<Record<string, readonly KeyInput[]>>;

/** Keys of each handle that are not counted: the first ones run code that is not compiled yet. */
const WARMING = 3;

/** What one key cost, ms. */
interface KeyCost {
  /** Computation and drawing in the page's thread. */
  readonly worked: number;
  /** From the key to the frame on the screen, to 8 ms (W3C Event Timing API). */
  readonly painted: number;
  /** From the key to the end of the frame that has light and window. */
  readonly whole: number;
}

/** A handle of the desk that is moved by keys in a browser without a graphics card; each key comes when nothing of the last goes on. */
export async function measureDesk({ quick }: Scale): Promise<Figure[]> {
  const browser = await openBrowser();
  try {
    const laid = await layOutKit(browser);
    try {
      const turn = middleAndMost(await laid.page.evaluate(timeTurns)).median;
      const costs = await pressKeys(laid.page, quick ? 4 : 12);
      const middle = (of: keyof KeyCost): number => middleAndMost(costs.map((cost) => cost[of])).median;
      return [
        { line: "desk-key", value: middle("worked"), yardstick: turn },
        { line: "desk-painted", value: middle("painted"), yardstick: turn },
        { line: "desk-light", value: middle("whole"), yardstick: turn },
      ];
    } finally {
      await laid.close();
    }
  } finally {
    await browser.close();
  }
}

async function pressKeys(page: Page, rounds: number): Promise<KeyCost[]> {
  const costs: KeyCost[] = [];
  await page.evaluate(watchFrames);
  for (const [handle, keys] of Object.entries(MOVED)) {
    await page.focus(`[data-handle="${handle}"]`);
    for (let i = 0; i < WARMING + rounds; i += 1) {
      const cost = await pressKey(page, keys[i % 2]!);
      if (i >= WARMING) costs.push(cost);
    }
  }
  return costs;
}

async function pressKey(page: Page, key: KeyInput): Promise<KeyCost> {
  await page.evaluate(() => Object.assign(self, { key: undefined, wholeAt: 0 }));
  await page.keyboard.press(key);
  await page.waitForFunction(
    () => {
      const watch = self as unknown as Watch;
      return watch.key !== undefined && watch.wholeAt > watch.key.startTime;
    },
    { polling: 20 },
  );
  await atRest(page);
  return page.evaluate(() => {
    const { key, wholeAt } = self as unknown as Watch;
    const { startTime, processingStart, processingEnd, duration } = key!;
    return { worked: processingEnd - processingStart, painted: duration, whole: wholeAt - startTime };
  });
}

/** What is noted in the page. */
interface Watch {
  key: PerformanceEventTiming | undefined;
  wholeAt: number;
}

/** Runs in the page: notes the last key, and when the frame after the last light and window was done. */
function watchFrames(): void {
  const note = (what: Partial<Watch>): void => void Object.assign(self, what);
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (entry.name === "keydown") note({ key: entry as PerformanceEventTiming });
  }).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
  // It is told in the very task that changed the page, before the frame that shows it.
  new MutationObserver(() => {
    if (performance.getEntriesByName("table whole").length === 0) return;
    performance.clearMarks("table whole");
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => note({ wholeAt: performance.now() });
      port2.postMessage(undefined);
    });
  }).observe(document.querySelector("[data-table]")!, { subtree: true, childList: true, attributes: true });
}
