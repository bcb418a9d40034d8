import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { fixturePattern, shownOf } from "./bench-pattern.ts";
import { GULL, type Maker, MOON, newMaker } from "./bench-reader.ts";

/** Showing one leaf at a time, and moving among them. */
export function movingSuite(served: () => OpenedSite): void {
  describe("moving along the bench", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
    });
    afterEach(() => maker.close());

    it.each([
      ["little-gull", GULL],
      ["harbour-moon", MOON],
    ])("shows every leaf of %s with page, pattern page, marks, cuts and folds as computed", async (slug, path) => {
      await maker.open(path);
      expect(await maker.walk()).toEqual(shownOf(fixturePattern(slug)));
    });

    it("draws the light's notch on the leaves that have one, and names it", async () => {
      const { notches } = fixturePattern("harbour-moon").pocket!;
      await maker.open(MOON);
      await maker.goTo("leaf", notches[0]!.leaf - 1);
      expect(await maker.page.$$eval(".edge-notch", (all) => all.length)).toBe(0);
      await maker.goTo("leaf", notches[0]!.leaf);
      expect(await maker.page.$$eval(".edge-notch", (all) => all.length)).toBe(1);
      expect(await maker.text("work-notes")).toContain(`${notches[0]!.depth.toFixed(1)}\u00a0mm deep`);
    });

    it("goes on and back by keys, and stays at the ends", async () => {
      await maker.open(GULL);
      const { keyboard } = maker.page;
      const places: number[] = [];
      for (const key of ["ArrowRight", "PageDown", "ArrowRight", "ArrowLeft", "PageUp", "Backspace"] as const) {
        await keyboard.press(key);
        places.push(await maker.leaf());
      }
      expect(places).toEqual([2, 3, 4, 3, 2, 1]);
      // A pedal's key for the next page ticks the leaf as well.
      expect(await maker.done()).toBe(1);
      for (let i = 0; i < 12; i += 1) await keyboard.press("ArrowLeft");
      expect(await maker.text("big")).toBe("Check the book");
      await maker.goToStep("Open to the hold width");
      await keyboard.press("ArrowRight");
      expect(await maker.text("big")).toBe("Open to the hold width");
    });

    it("ticks by Enter and by Space, once for each press, however long a key is held", async () => {
      await maker.open(GULL);
      const { keyboard } = maker.page;
      await keyboard.press("Enter");
      await keyboard.press("Space");
      expect([await maker.leaf(), await maker.done()]).toEqual([3, 2]);
      // Without a release between, a second press is what a browser sends while a key is held.
      await keyboard.down("Enter");
      await keyboard.down("Enter");
      await keyboard.down("Enter");
      await keyboard.up("Enter");
      expect([await maker.leaf(), await maker.done()]).toEqual([4, 3]);
    });

    it("goes on and back by tap and by swipe; a short, a slanting or an upright stroke does nothing", async () => {
      const { page } = maker;
      await page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true });
      await maker.open(GULL);
      await page.tap("[data-next]");
      await page.tap("[data-next]");
      await page.tap("[data-back]");
      expect(await maker.leaf()).toBe(2);
      const stroke = async (from: readonly [number, number], to: readonly [number, number]): Promise<number> => {
        await page.touchscreen.touchStart(...from);
        await page.touchscreen.touchMove((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
        await page.touchscreen.touchMove(...to);
        await page.touchscreen.touchEnd();
        return maker.leaf();
      };
      expect(await stroke([300, 400], [120, 410])).toBe(3);
      expect(await stroke([300, 400], [120, 390])).toBe(4);
      expect(await stroke([100, 400], [290, 400])).toBe(3);
      expect(await stroke([200, 300], [120, 350])).toBe(3);
      expect(await stroke([200, 400], [160, 400])).toBe(3);
      expect(await stroke([200, 300], [120, 460])).toBe(3);
      await page.tap("[data-go]");
      expect([await maker.leaf(), await maker.done()]).toEqual([4, 1]);
    });

    it("jumps by book page, front or back, and by leaf; says why where it cannot", async () => {
      await maker.open(GULL);
      // Page 1 stands on leaf 3: page 75 on leaf 40, with 76 behind it.
      await maker.goTo("page", 75);
      expect([await maker.leaf(), await maker.text("big")]).toEqual([40, "75"]);
      await maker.goTo("page", 78);
      expect([await maker.leaf(), await maker.text("big")]).toEqual([41, "77"]);
      await maker.goTo("leaf", 2);
      expect([await maker.leaf(), await maker.text("big-kind")]).toEqual([2, "front leaf 2 of 2"]);
      await maker.goTo("page", 219);
      expect(await maker.text("jump-answer")).toBe("Page 219 is not in this book: pages run from 1 to 218.");
      expect(await maker.page.$eval("[data-jump]", (dialog) => (dialog as HTMLDialogElement).open)).toBe(true);
      await maker.page.$eval("[data-jump-number]", (field) => {
        (field as HTMLInputElement).value = "p. 9";
      });
      await maker.page.$eval("[data-jump] [value=page]", (button) => (button as HTMLElement).click());
      expect(await maker.text("jump-answer")).toBe("Write a whole number.");
      expect(await maker.leaf()).toBe(2);
    });
  });
}
