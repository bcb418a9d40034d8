import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { GULL, type Maker, newMaker } from "./bench-reader.ts";

/** A whole batch without a pointer. */
export function keyboardSuite(served: () => OpenedSite): void {
  describe("the bench by keyboard alone", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
      await maker.open(GULL);
    });
    afterEach(() => maker.close());

    const keys = async (...pressed: ("Enter" | "Tab" | "Escape" | "Space" | "ArrowRight")[]) => {
      for (const key of pressed) await maker.page.keyboard.press(key);
    };
    const focused = () => maker.page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");
    const isFocused = (selector: string) =>
      maker.page.evaluate((one) => document.activeElement?.matches(one) === true, selector);
    /** Tabs on until the element has the focus, as seldom as the page allows, and sees that its outline shows. */
    const tabTo = async (selector: string) => {
      for (let i = 0; i < 40; i += 1) {
        await keys("Tab");
        if (!(await isFocused(selector))) continue;
        const outline = await maker.page.$eval(selector, (one) => {
          const { outlineStyle, outlineWidth } = getComputedStyle(one.closest(".file") ?? one);
          return [outlineStyle, Number.parseFloat(outlineWidth)];
        });
        expect(outline).toEqual(["solid", 4]);
        return;
      }
      throw new Error(`no way to ${selector}: the focus is on "${await focused()}"`);
    };
    const openDialog = () =>
      maker.page.evaluate(() => document.querySelector("dialog[open]")?.querySelector("h2")?.textContent ?? "");

    it("folds the first batch with every prompt, and measures it", async () => {
      const { keyboard } = maker.page;
      for (let i = 0; i < 80 && !(await maker.gate()).startsWith("Batch 1 is folded"); i += 1) await keys("Enter");
      // 8 border leaves and the first of five batches of 96 picture leaves.
      expect(await maker.done()).toBe(8 + 19);
      await keys("Enter");
      expect(await openDialog()).toBe("Measure the first batch");
      expect(await isFocused("[data-measure-thickness]")).toBe(true);
      await keyboard.type("6.5");
      await keys("Enter");
      expect(await openDialog()).toBe("");
      expect(await maker.gate()).toContain("Batch 2 of 5");
      // The twentieth picture leaf is a checkpoint, too.
      await keys("Enter", "Enter", "Enter");
      // The browser may say that it sent a key before a busy page has answered it.
      await expect.poll(async () => [await maker.done(), await maker.leaf()]).toEqual([28, 29]);
    });

    it("reaches every dialog, leaves it by Escape, and comes back to where it was opened", async () => {
      for (const [opener, title] of [
        ["[data-open-jump]", "Go to a page or leaf"],
        ["[data-lose]", "Leave front leaf 1 of 2 (leaf 1) out?"],
        ["[data-open-menu]", "Menu"],
      ] as const) {
        await tabTo(opener);
        await keys("Enter");
        expect(await openDialog()).toBe(title);
        await keys("Escape");
        expect(await openDialog()).toBe("");
        expect(await isFocused(opener)).toBe(true);
      }
    });

    it("jumps, leaves a leaf out and takes it back in, ticks and unticks", async () => {
      await tabTo("[data-open-jump]");
      await keys("Enter");
      await maker.page.keyboard.type("75");
      await keys("Enter");
      expect(await maker.leaf()).toBe(40);
      await tabTo("[data-lose]");
      await keys("Enter");
      await tabTo("[data-recovery-do]");
      await keys("Enter");
      expect(await maker.leaf()).toBe(41);
      await tabTo(".notice.lost button");
      await keys("Enter");
      await tabTo("[data-recovery-do]");
      await keys("Enter");
      expect(await maker.leaf()).toBe(40);
      await tabTo("[data-done]");
      await keys("Space");
      expect(await maker.done()).toBe(1);
      await keys("Space");
      expect(await maker.done()).toBe(0);
      await keys("ArrowRight");
      expect(await maker.leaf()).toBe(41);
    });

    it("reaches all of the menu: units, file out, all pieces, closing", async () => {
      await tabTo("[data-open-menu]");
      await keys("Enter");
      for (const selector of ["[data-menu-measure]", "[data-export]", "[data-export] + a", "[data-anew]"])
        await tabTo(selector);
      await tabTo("[data-units]");
      await maker.page.keyboard.type("inch");
      await tabTo("dialog[open] [data-close]");
      await keys("Enter");
      expect(await openDialog()).toBe("");
      await maker.goTo("leaf", 40);
      expect(await maker.page.$eval("[data-edge]", (edge) => edge.textContent)).toContain("in from the head");
    });

    it("speaks each leaf, its prompt and what was done", async () => {
      await maker.goTo("leaf", 18);
      expect(await maker.text("say")).toMatch(
        /^Checkpoint: is this page 31, with its first mark at .*\? Leaf 18, page 31\. Pattern page 19\./,
      );
      await keys("Enter", "Enter");
      expect(await maker.text("say")).toMatch(
        /^Leaf 19, page 33\. Pattern page 21\. \d+ marks in millimetres from the head: /,
      );
    });
  });
}
