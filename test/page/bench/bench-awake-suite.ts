import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { GULL, type Maker, newMaker } from "./bench-reader.ts";

/** What the stand-in for the browser's wake lock keeps. */
interface Watched {
  readonly asked: string[];
  held: (EventTarget & { release: () => Promise<void> }) | undefined;
  refuse: boolean;
}

/** Keeping the screen on. Source: Screen Wake Lock API, W3C: a lock is released when the page is hidden, and asked for again. */
export function awakeSuite(served: () => OpenedSite): void {
  describe("keeping the screen on", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
    });
    afterEach(() => maker.close());

    const asked = () => maker.page.evaluate(() => (window as unknown as { lock: Watched }).lock.asked.length);
    const switched = () => maker.page.$eval("[data-awake]", (one) => one.getAttribute("aria-checked"));
    const setVisible = (state: "visible" | "hidden") =>
      maker.page.evaluate(async (next) => {
        Object.defineProperty(document, "visibilityState", { value: next, configurable: true });
        const { lock } = window as unknown as { lock: Watched };
        if (next === "hidden") await lock.held?.release();
        document.dispatchEvent(new Event("visibilitychange"));
      }, state);
    const settled = (state: string) => maker.page.waitForSelector(`[data-awake][data-state="${state}"]`);

    it("asks at once, and again when the page is seen again", async () => {
      await maker.page.evaluateOnNewDocument(standIn, false);
      await maker.open(GULL);
      await settled("on");
      expect([await asked(), await switched()]).toEqual([1, "true"]);
      expect(await maker.page.evaluate(() => (window as unknown as { lock: Watched }).lock.asked[0])).toBe("screen");
      await setVisible("hidden");
      await settled("waiting");
      expect([await asked(), await switched()]).toEqual([1, "false"]);
      await setVisible("visible");
      await settled("on");
      expect([await asked(), await switched()]).toEqual([2, "true"]);
    });

    it("stays off once she switched it off, through hiding and a reload, until she switches it on", async () => {
      await maker.page.evaluateOnNewDocument(standIn, false);
      await maker.open(GULL);
      await settled("on");
      await maker.press("awake");
      await settled("off");
      await setVisible("hidden");
      await setVisible("visible");
      expect(await asked()).toBe(1);
      await maker.open(GULL);
      await settled("off");
      expect(await asked()).toBe(0);
      await maker.press("awake");
      await settled("on");
      expect(await asked()).toBe(1);
    });

    it("shows that the device refuses, and works all the same", async () => {
      await maker.page.evaluateOnNewDocument(standIn, true);
      await maker.open(GULL);
      await settled("waiting");
      expect([await asked(), await maker.text("awake-words")]).toEqual([1, "Keep the screen on"]);
      await maker.press("go");
      expect(await maker.done()).toBe(1);
    });

    it("cannot be pressed where the browser has no such thing", async () => {
      await maker.page.evaluateOnNewDocument(() => {
        delete (Navigator.prototype as { wakeLock?: unknown }).wakeLock;
      });
      await maker.open(GULL);
      await settled("none");
      expect(await maker.page.$eval("[data-awake]", (one) => (one as HTMLButtonElement).disabled)).toBe(true);
      await maker.press("go");
      expect(await maker.done()).toBe(1);
    });
  });
}

/** Puts a wake lock that can be watched in the browser's place. Runs in the page. */
function standIn(refuse: boolean): void {
  const lock: Watched = { asked: [], held: undefined, refuse };
  Object.assign(window, { lock });
  const request = async (kind: string): Promise<unknown> => {
    lock.asked.push(kind);
    if (lock.refuse) throw new DOMException("low battery", "NotAllowedError");
    const held: NonNullable<Watched["held"]> = Object.assign(new EventTarget(), {
      release: async () => {
        lock.held = undefined;
        held.dispatchEvent(new Event("release"));
      },
    });
    lock.held = held;
    return held;
  };
  Object.defineProperty(navigator, "wakeLock", { value: { request }, configurable: true });
}
