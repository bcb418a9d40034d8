import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { fixturePattern } from "./bench-pattern.ts";
import { type Maker, MOON, newMaker } from "./bench-reader.ts";

/** What the stand-in for the device's voice was given. */
interface Heard {
  said: string[];
  language: string;
  find: () => void;
}

/** Hands that hold a knife: her ruler at a mark, leaves read aloud, going on by a tap, a pedal, one key. */
export function handsSuite(served: () => OpenedSite): void {
  describe("the bench with busy hands", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
    });
    afterEach(() => maker.close());

    const busy = fixturePattern("harbour-moon").leaves.find(({ cuts }) => cuts.length === 7)!;
    const openBusy = async () => {
      await maker.open(MOON);
      await maker.goTo("leaf", busy.leaf);
      await maker.answer("They are folded");
    };
    const switchOn = (name: string) => maker.press(name);
    const closeMenu = () => maker.page.$eval("[data-menu] [data-close]", (one) => (one as HTMLElement).click());
    const heard = () => maker.page.evaluate(() => (window as unknown as { heard: Heard }).heard.said.splice(0));
    const isShown = (name: string) => maker.page.$eval(`[data-${name}]`, (one) => one.checkVisibility());
    const strong = () => maker.page.$$eval(".edge-label", (all) => all.findIndex((one) => one.matches(".now")));
    const choose = (name: string, value: string) => maker.page.select(`[data-${name}]`, value);

    it("show each mark on her ruler in turn, strong in the drawing, and never claim true size", async () => {
      await openBusy();
      const at = busy.cuts.map((cut) => cut.at);
      const words = (mark: number) => {
        const mm = at[mark]!;
        const where = Number.isInteger(mm) ? "on a line" : `between ${Math.floor(mm)} and ${Math.ceil(mm)}`;
        return `Mark ${mark + 1} of 7: ${mm.toFixed(1)} mm, ${where}.`;
      };
      const told = async () => (await maker.text("ruler-words")).replaceAll("\u00a0", " ");
      expect([await told(), await strong()]).toEqual([words(0), 0]);
      await maker.press("mark-next");
      expect([await told(), await strong()]).toEqual([words(1), 1]);
      expect((await maker.text("say")).replaceAll("\u00a0", " ")).toBe(words(1));
      await maker.press("mark-before");
      await maker.press("mark-before");
      expect([await told(), await strong()]).toEqual([words(6), 6]);
      expect(await maker.page.$eval("[data-ruler]", (one) => one.textContent)).toContain("not at true size");
      // The mark's line stands in the middle of the strip.
      const [line, strip] = await maker.page.$$eval(".ruler-now, .ruler-drawing", (all) =>
        all.map((one) => one.getBoundingClientRect()).map(({ left, width }) => left + width / 2),
      );
      expect(Math.abs(line! - strip!)).toBeLessThan(2);
      await maker.press("next");
      expect(await strong()).toBe(0);
    });

    it("have her own ruler's lines, in inches too, or no ruler; border leaves have no mark to show", async () => {
      await openBusy();
      const lines = () => maker.page.$$eval(".ruler-line", (all) => all.length);
      const options = () => maker.page.$$eval("[data-ruler-step] option", (all) => all.map((one) => one.textContent));
      const plain = await lines();
      await maker.press("open-menu");
      expect(await options()).toEqual(["0.5\u00a0mm", "1\u00a0mm", "Do not show a ruler"]);
      await choose("ruler-step", "fine");
      expect(await lines()).not.toBe(plain);
      await choose("units", "in");
      expect(await options()).toEqual(["1/32\u00a0in", "1/16\u00a0in", "1/8\u00a0in", "Do not show a ruler"]);
      await choose("ruler-step", "coarse");
      expect(await maker.text("ruler-words")).toMatch(/^Mark 1 of 7: [\d /]+\u00a0in, /);
      await choose("ruler-step", "off");
      expect([await isShown("ruler"), await strong()]).toEqual([false, -1]);
      await maker.open(MOON);
      await maker.goTo("leaf", busy.leaf);
      expect(await isShown("ruler")).toBe(false);
      await maker.press("open-menu");
      await choose("ruler-step", "plain");
      expect(await isShown("ruler")).toBe(true);
      await maker.goTo("leaf", 2);
      expect(await isShown("ruler")).toBe(false);
    });

    it("hear each leaf once she wants it: page, marks, folds; R says it again, M the next mark", async () => {
      await maker.page.evaluateOnNewDocument(standIn, true);
      await openBusy();
      expect([await heard(), await isShown("voice-again")]).toEqual([[], false]);
      await maker.page.keyboard.press("r");
      expect(await heard()).toEqual([]);
      await maker.press("open-menu");
      await switchOn("voice");
      await closeMenu();
      const first = await heard();
      expect(first[0]).toBe(`Page ${busy.bookPage}.`);
      expect(first[1]).toBe("7 marks from the head, in millimetres.");
      expect(first.some((phrase) => phrase.startsWith("Fold back and tuck behind, head to tail: "))).toBe(true);
      await maker.page.keyboard.press("r");
      expect(await heard()).toEqual(first);
      await maker.press("voice-again");
      expect(await heard()).toEqual(first);
      await maker.page.keyboard.press("m");
      expect(await heard()).toEqual([
        expect.stringMatching(/^Mark 2 of 7: [\d.]+, cut [\d.]+\.$/),
        expect.stringMatching(/^Above it fold back at level \d, below it at level \d\.$/),
      ]);
      expect(await strong()).toBe(1);
      await maker.press("next");
      expect((await heard())[0]).toMatch(/^Page \d+\.$/);
      expect(await maker.page.evaluate(() => (window as unknown as { heard: Heard }).heard.language)).toBe("en");
      // It is kept, and off again when she says so.
      await maker.open(MOON);
      expect((await heard()).length).toBeGreaterThan(0);
      await maker.press("open-menu");
      await switchOn("voice");
      await maker.press("next");
      expect(await heard()).toEqual([]);
    });

    it("have no switch for a voice where the device has none, and get it once one is found", async () => {
      await maker.page.evaluateOnNewDocument(standIn, false);
      await maker.open(MOON);
      await maker.press("open-menu");
      expect(await isShown("voice-place")).toBe(false);
      await maker.page.evaluate(() => (window as unknown as { heard: Heard }).heard.find());
      expect(await isShown("voice-place")).toBe(true);
      await maker.page.evaluateOnNewDocument(() =>
        Object.defineProperty(window, "speechSynthesis", { value: undefined }),
      );
      await maker.open(MOON);
      await maker.press("open-menu");
      expect(await isShown("voice-place")).toBe(false);
    });

    it("go on by a tap anywhere once she wants it, but not by one on a link, a button or a dialog; the way back undoes it", async () => {
      await maker.page.setViewport({ width: 390, height: 844, hasTouch: true });
      await openBusy();
      const done = await maker.done();
      const tapAt = async (selector: string) => {
        const box = await maker.page.$eval(selector, (one) => {
          const { left, top, width, height } = one.getBoundingClientRect();
          return { x: left + width / 2, y: top + height / 2 };
        });
        await maker.page.touchscreen.tap(box.x, box.y);
      };
      await tapAt("[data-edge]");
      expect(await maker.done()).toBe(done);
      await maker.press("open-menu");
      await switchOn("tap");
      await tapAt("[data-menu] h2");
      await closeMenu();
      expect([await maker.done(), await maker.text("back-words")]).toEqual([done, "Back"]);
      await tapAt("[data-edge]");
      await expect.poll(() => maker.done()).toBe(done + 1);
      expect([await maker.leaf(), await maker.text("back-words")]).toEqual([busy.leaf + 1, "Undo"]);
      const [back, next] = await maker.page.$$eval("[data-back], [data-next]", (all) =>
        all.map((one) => one.getBoundingClientRect().width),
      );
      expect(back).toBeGreaterThan(1.5 * next!);
      await tapAt("[data-back]");
      await expect.poll(() => maker.done()).toBe(done);
      expect([await maker.leaf(), await maker.text("back-words")]).toEqual([busy.leaf, "Back"]);
      await tapAt("[data-mark-next]");
      await tapAt("[data-next]");
      await expect.poll(() => maker.leaf()).toBe(busy.leaf + 1);
      expect(await maker.done()).toBe(done);
    });

    it("tick and go on by a pedal's page keys, by its arrows once she says so, and not while it is held down", async () => {
      await openBusy();
      const done = await maker.done();
      const { keyboard } = maker.page;
      const state = async () => [await maker.leaf(), (await maker.done()) - done];
      await keyboard.press("PageDown");
      expect(await state()).toEqual([busy.leaf + 1, 1]);
      await keyboard.press("PageUp");
      expect(await state()).toEqual([busy.leaf, 1]);
      await keyboard.press("PageDown");
      await keyboard.press("ArrowRight");
      expect(await state()).toEqual([busy.leaf + 2, 1]);
      await keyboard.press("ArrowLeft");
      await maker.press("open-menu");
      await switchOn("pedal");
      await closeMenu();
      await keyboard.press("ArrowRight");
      expect(await state()).toEqual([busy.leaf + 2, 2]);
      await keyboard.down("ArrowDown");
      await keyboard.down("ArrowDown");
      await keyboard.up("ArrowDown");
      expect(await state()).toEqual([busy.leaf + 3, 3]);
      await keyboard.press("ArrowUp");
      expect(await maker.leaf()).toBe(busy.leaf + 2);
    });

    it("find the focus where it helps: after a press by hand on no button, after an answer on the main one", async () => {
      await openBusy();
      const focused = () => maker.page.evaluate(() => document.activeElement?.textContent?.trim());
      const done = await maker.done();
      await maker.page.click("[data-next]");
      await maker.page.keyboard.press("Space");
      expect(await maker.done()).toBe(done + 1);
      const notice = await maker.page.waitForSelector("[data-notices] button");
      await notice!.focus();
      await maker.page.keyboard.press("Enter");
      expect(await focused()).toBe("Done");
      await maker.page.keyboard.press("Enter");
      expect(await maker.done()).toBe(done + 2);
    });

    // Source: Media Queries 5, display-mode; an installed app has no way back of the browser's.
    it("find the way back to the kit's page at every size, in the installed app first of all", async () => {
      await openBusy();
      for (const [width, height] of [
        [390, 844],
        [844, 390],
        [1280, 800],
      ] as const) {
        await maker.page.setViewport({ width, height });
        const home = await maker.page.$eval("[data-home]", (one) => {
          const { top, bottom, left, height: tall } = one.getBoundingClientRect();
          return { seen: top >= 0 && left >= 0 && bottom <= innerHeight, tall, href: (one as HTMLAnchorElement).href };
        });
        expect(home.seen).toBe(true);
        expect(home.tall).toBeGreaterThanOrEqual(44);
        expect(new URL(home.href).pathname).toMatch(/\/kits\/harbour-moon\/index\.html$/);
      }
    });
  });
}

/** Puts a voice that can be watched in the device's place. Runs in the page. */
function standIn(found: boolean): void {
  const told = new EventTarget();
  let voices = found ? [{}] : [];
  const heard: Heard = {
    said: [],
    language: "",
    find: () => {
      voices = [{}];
      told.dispatchEvent(new Event("voiceschanged"));
    },
  };
  const speech = Object.assign(told, {
    getVoices: () => voices,
    cancel: () => {},
    speak: ({ text, lang }: SpeechSynthesisUtterance) => {
      heard.said.push(text);
      heard.language = lang;
    },
  });
  Object.assign(window, { heard });
  Object.defineProperty(window, "speechSynthesis", { value: speech, configurable: true });
}
