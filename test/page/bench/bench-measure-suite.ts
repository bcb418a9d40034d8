import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { calibrateByHand } from "../../core/bench/by-hand.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf } from "../../site/visit.ts";
import { type Maker, MOON, newMaker } from "./bench-reader.ts";

/** The first batch's thickness, and what follows from it. */
export function measureSuite(served: () => OpenedSite): void {
  describe("measuring the first batch", () => {
    let maker: Maker;
    const meet = async () => {
      maker = await newMaker(served());
      await maker.open(MOON);
    };
    const openForm = async () => {
      await maker.press("open-menu");
      await maker.press("menu-measure");
    };
    const write = async (name: string, words: string) => {
      await maker.page.click(`[data-measure-${name}]`, { count: 3 });
      await maker.page.keyboard.press("Backspace");
      await maker.page.keyboard.type(words);
    };
    const result = async () => (await maker.text("measure-result")).replaceAll("\u00a0", " ");
    const degrees = (angle: number) => `${Math.round((angle * 180) / Math.PI)}°`;
    const whole = (mm: number) => `${Math.round(mm)} mm`;

    describe("in a dialog that stays open", () => {
      beforeAll(async () => {
        await meet();
        await openForm();
      });
      afterAll(() => maker.close());

      it.each([
        ["9.5", 9.5],
        ["3/8 in", 9.525],
        ["14 mm", 14],
        ["1.3 cm", 13],
      ])("shows for %s bulk, resting opening and hold width as worked by hand", async (written, thickness) => {
        const hand = calibrateByHand(fixtureKit("harbour-moon"), 20, thickness);
        expect(await maker.page.$eval("[data-measure-leaves]", (field) => (field as HTMLInputElement).value)).toBe(
          "20",
        );
        await write("thickness", written);
        const words = await result();
        expect(words).toContain(`Each flap is as bulky as ${hand.kappa.toFixed(1)} leaves.`);
        expect(words).toContain(
          `rests at about ${degrees(hand.rest)}. The picture needs ${degrees(hand.wanted)}, a hold width of ${whole(hand.hold)}.`,
        );
        if (hand.rest > hand.wanted) expect(words).toContain(`push it wider, to about ${whole(hand.resting)}.`);
        else expect(words).toContain("Your book closes far enough for it.");
      });

      it.each([
        ["thickness", "1", /Allowed: 2\.4 mm to 30\.6 mm\. 20 leaves of this book are 2\.4 mm/],
        ["thickness", "a lot", /Allowed: a length like 9\.5 or 3\/8 in/],
        ["leaves", "1", /Allowed: 2 to 204 leaves/],
        ["leaves", "300", /Allowed: 2 to 204 leaves/],
        ["thickness", "", /Allowed: a length like/],
      ])("refuses %s %j, says what is allowed and keeps nothing", async (name, words, why) => {
        await write("thickness", "9.5");
        await write("leaves", "20");
        await write(name, words);
        await maker.page.keyboard.press("Enter");
        expect(await result()).toMatch(why);
        const field = await maker.page.$eval(`[data-measure-${name}]`, (one) => [
          one.getAttribute("aria-invalid"),
          document.activeElement === one,
        ]);
        expect(field).toEqual(["true", true]);
        expect(await maker.page.$$eval("[data-measure-form] [aria-invalid]", (all) => all.length)).toBe(1);
        expect(new URL(maker.page.url()).searchParams.has("bulk")).toBe(false);
      });
    });

    describe("to its end", () => {
      beforeEach(meet);
      afterEach(() => maker.close());

      it("fits the kit's page again, which shows the same hold width", async () => {
        const hand = calibrateByHand(fixtureKit("harbour-moon"), 20, 14);
        await openForm();
        await write("thickness", "14");
        await maker.page.keyboard.press("Enter");
        expect(await maker.text("say")).toContain("Each flap is as bulky as");
        expect(await maker.text("notices")).toContain("Each flap is as bulky as");
        await openForm();
        expect(await maker.page.$eval("[data-measure-thickness]", (field) => (field as HTMLInputElement).value)).toBe(
          "14 mm",
        );
        await maker.page.keyboard.press("Escape");
        const home = await maker.page.$eval("[data-home]", (link) => (link as HTMLAnchorElement).href);
        expect(Number(new URL(home).searchParams.get("bulk"))).toBeCloseTo(hand.kappa, 2);
        await maker.page.goto(home, { waitUntil: "load" });
        await textOf(maker.page, "[data-refit-state]", /worked out for your book/);
        const page = (await textOf(maker.page, "main", /push the book open/)).replaceAll("\u00a0", " ");
        const forced = Number(/push the book open to about ([\d.]+)°/.exec(page)![1]);
        expect(Math.abs(forced - (hand.rest * 180) / Math.PI)).toBeLessThan(0.51);
        expect(page).toContain(`Hold width${whole(hand.hold)}`);
      });

      it("gives that width at the end of the work, with the wider one that her flaps force", async () => {
        const hand = calibrateByHand(fixtureKit("harbour-moon"), 20, 14);
        await openForm();
        await write("thickness", "14");
        await maker.page.keyboard.press("Enter");
        await maker.goTo("leaf", 204);
        await maker.answer("They are folded");
        await maker.goToStep("Open to the hold width");
        expect((await maker.text("step")).replaceAll("\u00a0", " ")).toContain(`are ${whole(hand.hold)} apart`);
        const notices = (await maker.text("notices")).replaceAll("\u00a0", " ");
        expect(notices).toContain(`Your flaps push it wider, to about ${whole(hand.resting)}.`);
      });
    });
  });
}
