import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { fixturePattern } from "./bench-pattern.ts";
import { type Maker, MOON, newMaker } from "./bench-reader.ts";

/** A phone upright, a phone on its side, a laptop of 1280 × 720 at twice the size, a tablet, a laptop. CSS pixels. */
const SCREENS = [
  [390, 844],
  [844, 390],
  [640, 360],
  [1024, 768],
  [1280, 800],
] as const;

/** What she needs for a leaf is seen without scrolling. */
export function lowSuite(served: () => OpenedSite): void {
  describe("the bench on low screens", () => {
    const busy = fixturePattern("harbour-moon").leaves.filter(({ cuts }) => cuts.length >= 7);
    let maker: Maker;
    beforeAll(async () => {
      maker = await newMaker(served());
      await maker.open(MOON);
      await maker.goTo("leaf", busy[0]!.leaf);
      await maker.answer("They are folded");
    });
    afterAll(() => maker.close());

    it.each(SCREENS)(
      "shows page number, marks and drawing of a leaf with seven marks at once at %d × %d",
      async (...size) => {
        const [width, height] = size;
        await maker.page.setViewport({ width, height });
        // The drawing follows the room once it changed.
        await maker.page.evaluate(
          () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
        );
        expect(await maker.page.$$eval(".edge-label", (all) => all.length)).toBe(busy[0]!.cuts.length);
        expect(await maker.page.evaluate(findHidden)).toEqual([]);
      },
    );
  });
}

/** What of page number, drawing, marks and buttons is not seen before anything is scrolled. Runs in the page. */
function findHidden(): string[] {
  const bar = document.querySelector(".bar")!.getBoundingClientRect();
  const wanted = [".big-figure", ".edge-drawing", ".edge-label", ".edge-disc"];
  const hidden = wanted.flatMap((selector) =>
    [...document.querySelectorAll(selector)].filter((one) => {
      const { left, top, right, bottom } = one.getBoundingClientRect();
      return left < 0 || top < 0 || right > innerWidth || bottom > bar.top + 1 || bottom <= top;
    }),
  );
  const [button] = [...document.querySelectorAll(".bar button")].filter(
    (one) => one.getBoundingClientRect().bottom > innerHeight,
  );
  return [...hidden, ...(button ? [button] : [])].map((one) => `${one.getAttribute("class")} ${one.textContent}`);
}
