import type { BrowserContext, Page } from "puppeteer";
import type { Abilities, OpenedSite } from "../../site/shared-site.ts";
import { newReader } from "../../site/visit.ts";

export const GULL = "kits/little-gull/bench/index.html";
export const MOON = "kits/harbour-moon/bench/index.html";

/** What the bench shows of one leaf. */
export interface Shown {
  readonly leaf: number;
  readonly page: string;
  readonly patternPage: string;
  /** `46.5›24`, as the drawing writes them. */
  readonly marks: readonly string[];
  readonly folds: readonly number[];
}

/** A maker with a device of her own at a bench. */
export interface Maker {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Opens a bench page at a leaf: what is to do before the first one is done. */
  readonly open: (path: string) => Promise<void>;
  readonly leaf: () => Promise<number>;
  readonly done: () => Promise<number>;
  /** The prompt before the leaf; empty where there is none. */
  readonly gate: () => Promise<string>;
  /** The text of the element with `data-<name>`. */
  readonly text: (name: string) => Promise<string>;
  /** Presses the element with `data-<name>` without moving the pointer. */
  readonly press: (name: string) => Promise<void>;
  /** Presses the button with these words in the prompt or in a notice. */
  readonly answer: (words: string) => Promise<void>;
  readonly goTo: (kind: "page" | "leaf", number: number) => Promise<void>;
  /** Goes on to the step with this title, over what is not done. */
  readonly goToStep: (title: string) => Promise<void>;
  /** Every leaf from the one on the bench to the last one. */
  readonly walk: () => Promise<Shown[]>;
  readonly close: () => Promise<void>;
}

export async function newMaker(served: Pick<OpenedSite, "browser" | "host">, abilities?: Abilities): Promise<Maker> {
  const { context, page } = await newReader(served, abilities);
  const text = (name: string): Promise<string> => page.$eval(`[data-${name}]`, (one) => one.textContent!.trim());
  const press = (name: string): Promise<void> => page.$eval(`[data-${name}]`, (one) => (one as HTMLElement).click());
  return {
    context,
    page,
    text,
    press,
    open: async (path) => {
      await page.goto(served.host.site + path, { waitUntil: "load" });
      await page.waitForSelector("[data-bench]:not([hidden])");
      await page.evaluate(prepare);
      await page.waitForSelector("[data-edge] svg");
    },
    leaf: async () => Number(await text("leaf")),
    done: async () => Number.parseInt(await text("ticked"), 10),
    gate: () => page.$eval("[data-gate]", (gate) => ((gate as HTMLElement).hidden ? "" : gate.textContent!)),
    answer: (words) =>
      page.$$eval(
        "[data-gate] button, [data-notices] button",
        (buttons, wanted) => {
          const found = buttons.find((one) => one.textContent === wanted);
          if (!found) throw new Error(`no button "${wanted}"`);
          (found as HTMLElement).click();
        },
        words,
      ),
    goTo: async (kind, number) => {
      await press("open-jump");
      await page.$eval(
        "[data-jump-number]",
        (field, value) => {
          (field as HTMLInputElement).value = value;
        },
        String(number),
      );
      await page.$eval(`[data-jump] [value=${kind}]`, (button) => (button as HTMLElement).click());
    },
    goToStep: (title) => page.evaluate(goOnTo, title),
    walk: () => page.evaluate(readOn),
    close: () => context.close(),
  };
}

function prepare(): void {
  const stage = document.querySelector("[data-stage]")!;
  for (let i = 0; i < 100 && stage.classList.contains("of-step"); i += 1)
    document.querySelector<HTMLButtonElement>("[data-go]")!.click();
}

function goOnTo(title: string): void {
  const next = document.querySelector<HTMLButtonElement>("[data-next]")!;
  while (document.querySelector("[data-big]")!.textContent !== title) {
    if (next.disabled) throw new Error(`no step "${title}"`);
    next.click();
  }
}

function readOn(): Shown[] {
  const text = (name: string): string => document.querySelector(`[data-${name}]`)!.textContent!;
  const list = (selector: string): string[] => [...document.querySelectorAll(selector)].map((one) => one.textContent!);
  const next = document.querySelector<HTMLButtonElement>("[data-next]")!;
  const shown: Shown[] = [];
  for (;;) {
    if (!document.querySelector("[data-stage]")!.classList.contains("of-step"))
      shown.push({
        leaf: Number(text("leaf")),
        page: text("big"),
        patternPage: text("pattern-page"),
        marks: list("[data-edge] .edge-label"),
        folds: list("[data-folds] li").map(Number),
      });
    if (next.disabled) return shown;
    next.click();
  }
}
