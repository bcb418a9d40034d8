import type { Page } from "puppeteer";

/** What one key press in the fit panel cost, ms. */
export interface KeyTimes {
  readonly field: string;
  /** Computation of what is painted at the key: pattern, views, markup. */
  readonly computed: number;
  /** From the key to the end of the frame that shows it. */
  readonly painted: number;
  /** From the key to the end of the frame that shows everything, light and window included. */
  readonly settled: number;
}

interface Watch {
  key: number;
  painted: number;
  settled: number;
}

/** Types keys that give another figure, one after the other, each after the last has settled; `rounds` for each field. */
export async function typeFigures(page: Page, fields: readonly string[], rounds: number): Promise<KeyTimes[]> {
  await page.evaluate(watchKeys);
  const times: KeyTimes[] = [];
  for (const field of fields) {
    await page.$eval(`#fit-${field}`, (input) => input.closest("details")?.setAttribute("open", ""));
    await page.focus(`#fit-${field}`);
    await page.$eval(`#fit-${field}`, (input) => input.scrollIntoView({ block: "center" }));
    const own = await page.$eval(`#fit-${field}`, (input) => (input as HTMLInputElement).value);
    const figure = /\d+(?:\.\d+)?/.exec(own)![0];
    for (let round = 0; round < rounds; round += 1) {
      await page.$eval(`#fit-${field}`, putIn, figure.includes(".") ? figure : `${figure}.`);
      times.push({ field, ...(await pressKey(page, String(1 + (round % 8)))) });
    }
    await page.$eval(`#fit-${field}`, putIn, own);
    await pressKey(page, " ");
  }
  return times;
}

/** Sets a text without telling the page, so that the next key makes one change. */
function putIn(input: Element, text: string): void {
  (input as HTMLInputElement).value = text;
}

async function pressKey(page: Page, key: string): Promise<Omit<KeyTimes, "field">> {
  await page.evaluate(() => {
    performance.clearMeasures();
    Object.assign((self as unknown as { watch: Watch }).watch, { key: 0, painted: 0, settled: 0 });
  });
  await page.keyboard.press(key as "1");
  await page.waitForFunction(() => (self as unknown as { watch: Watch }).watch.settled > 0);
  return page.evaluate(() => {
    const { watch } = self as unknown as { watch: Watch };
    const [measure] = performance.getEntriesByName("fit in sight");
    return {
      computed: measure?.duration ?? 0,
      painted: watch.painted - watch.key,
      settled: watch.settled - watch.key,
    };
  });
}

/** Runs in the page: notes when a key was pressed and when the frames that follow from it were drawn. */
function watchKeys(): void {
  const watch: Watch = { key: 0, painted: 0, settled: 0 };
  Object.assign(self, { watch });
  const afterFrame = (then: () => void): void => {
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = then;
      port2.postMessage(undefined);
    });
  };
  document.addEventListener(
    "keydown",
    (event) => {
      watch.key = event.timeStamp;
    },
    true,
  );
  document.addEventListener("input", () => afterFrame(() => (watch.painted = performance.now())), true);
  new PerformanceObserver((list) => {
    if (list.getEntriesByName("fit settled").length > 0) afterFrame(() => (watch.settled = performance.now()));
  }).observe({ type: "mark" });
}
