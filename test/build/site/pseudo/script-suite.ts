import type { Browser, Page } from "puppeteer";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Maker, MOON, newMaker } from "../../../page/bench/bench-reader.ts";
import type { Host } from "../../../site/serve.ts";
import type { Abilities } from "../../../site/shared-site.ts";
import { settled, textOf } from "../../../site/visit.ts";
import { pageOverflow } from "./page-overflow.ts";
import { pageFaults } from "./said.ts";

/** What pages of the built site in the pseudo-language say after a reader did something. */
export function scriptSuite(served: () => { readonly host: Host; readonly browser: Browser }): void {
  /** Unmarked words, and what overflows at these widths. */
  async function faults(page: Page, place: string, widths = [1280, 390]): Promise<string[]> {
    const found = await pageFaults(page, place);
    for (const width of widths) {
      await page.setViewport({ width, height: 900 });
      found.push(...(await page.evaluate(pageOverflow)).map((fault) => `${place} at ${width} px: ${fault}`));
    }
    return found;
  }

  describe("scripts in the pseudo-language", () => {
    let maker: Maker;
    let page: Page;
    const visit = (path: string) => page.goto(served().host.site + path, { waitUntil: "load" });
    const meet = async (abilities?: Abilities) => {
      maker = await newMaker(served(), abilities);
      page = maker.page;
    };
    beforeEach(() => meet());
    afterEach(() => maker.close());

    const state = () => textOf(page, "[data-refit-state]", /«/);

    it.each([
      ["harbour-moon", "leaves=230&thick=27&last=450&depths=2_3", "leaves=90&thick=11&last=178"],
      ["little-gull", "leaves=128&thick=14.2&last=250&read=rtl", "height=104"],
    ])(
      "a kit's page: %s with a book that fits, one that does not, and one that cannot be read",
      async (slug, fits, misfits) => {
        const found: string[] = [];
        const states: string[] = [];
        for (const address of [fits, misfits]) {
          await visit(`kits/${slug}/index.html?${address}`);
          states.push(await state());
          await settled(page);
          found.push(...(await faults(page, `${slug} ${address}`)));
        }
        await page.$eval("#fit-leaves", (field) => (field as HTMLInputElement).select());
        await page.type("#fit-leaves", "many");
        await settled(page);
        found.push(...(await faults(page, `${slug} unreadable`)));
        expect(new Set([...states, await state()]).size).toBe(3);
        expect(found).toEqual([]);
      },
    );

    it.each(["index.html", "classes/evenings/index.html"])(
      "the finder of %s, with a book and with a mistake",
      async (path) => {
        const found: string[] = [];
        for (const address of [
          "height=178&width=108&thick=12.5&leaves=112",
          "height=104&width=72&thick=11&leaves=90",
        ]) {
          await visit(`${path}?${address}`);
          await textOf(page, "[data-kit] .verdict", /«/);
          found.push(...(await faults(page, `${path}?${address}`)));
        }
        await page.$eval("#find-leafWidth", (field) => {
          (field as HTMLInputElement).value = "2";
          field.dispatchEvent(new Event("change", { bubbles: true }));
          field.dispatchEvent(new Event("input", { bubbles: true }));
        });
        await settled(page);
        found.push(...(await faults(page, `${path} mistaken`)));
        expect(found).toEqual([]);
      },
    );

    it("the bench: prompts, leaves, dialogs, refusals and a leaf left out, with the site's own phrase", async () => {
      const found: string[] = [];
      const look = async (place: string) => found.push(...(await faults(page, `bench ${place}`)));
      await maker.open(MOON);
      await look("at first");
      await maker.press("back");
      await look("a score line");
      for (const leaf of [1, 14, 20, 60, 100, 192, 193, 204]) {
        await maker.goTo("leaf", leaf);
        await look(`leaf ${leaf}`);
        await page.evaluate(answerGate);
        await look(`leaf ${leaf}, answered`);
      }
      await maker.goTo("leaf", 1.5);
      expect(await maker.text("jump-answer")).toContain("«Whôlé nümbérs ônly");
      for (const [kind, number] of [
        ["leaf", 9999],
        ["page", 9999],
        ["page", 2],
      ] as const) {
        await maker.goTo(kind, number);
        await look(`${kind} ${number}`);
      }
      await page.keyboard.press("Escape");
      await maker.goTo("leaf", 60);
      await maker.press("lose");
      await look("recovery");
      await maker.press("recovery-do");
      await look("left out");
      await maker.press("open-menu");
      await look("menu");
      await maker.press("menu-measure");
      await page.type("[data-measure-thickness]", "30 mm");
      await look("measured");
      await page.type("[data-measure-thickness]", "x");
      await look("measured wrongly");
      expect(found).toEqual([]);
    });

    it("the view from all sides, a seat's page, and pages without a network", async () => {
      const found: string[] = [];
      await maker.close();
      await meet({ keeps: true });
      await visit("kits/harbour-moon/index.html");
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await page.$eval("[data-round-open]", (button) => (button as HTMLElement).click());
      await page.waitForSelector("#round canvas");
      found.push(...(await faults(page, "from all sides", [390])));
      await visit("classes/evenings/seat-2/index.html");
      await settled(page);
      found.push(...(await faults(page, "seat 2")));
      await page.setOfflineMode(true);
      for (const path of ["kits/harbour-moon/index.html", "nowhere/index.html"]) {
        await visit(path).catch(() => undefined);
        await settled(page);
        found.push(...(await faults(page, `offline ${path}`)));
      }
      expect(found).toEqual([]);
    });
  });
}

/** Runs in the bench's page: presses the first button of the prompt before a leaf. */
function answerGate(): void {
  const gate = document.querySelector<HTMLElement>("[data-gate]")!;
  if (!gate.hidden) gate.querySelector<HTMLElement>("button")?.click();
}
