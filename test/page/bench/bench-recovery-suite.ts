import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { frontPicture } from "../../../src/output/drawing/front/picture.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf } from "../../site/visit.ts";
import { recordsOf } from "../pieces/piece-reader.ts";
import { fixturePattern, shownOf } from "./bench-pattern.ts";
import { GULL, type Maker, MOON, newMaker } from "./bench-reader.ts";

/** "I skipped, tore or miscut this leaf". */
export function recoverySuite(served: () => OpenedSite): void {
  describe("recovery at the bench", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
    });
    afterEach(() => maker.close());

    const kept = async () => (await recordsOf(maker.page))[0]!.progress;
    const loseHere = async () => {
      await maker.press("lose");
      await maker.press("recovery-do");
    };

    it.each([
      ["little-gull", GULL, [40]],
      ["harbour-moon", MOON, [60, 61]],
    ] as const)(
      "%s without leaves %j: those that follow are laid out so that the picture closes",
      async (slug, path, lost) => {
        await maker.open(path);
        for (const leaf of lost) {
          await maker.goTo("leaf", leaf);
          await loseHere();
        }
        // The bench stands at the next leaf that remains, and says what was left out before it.
        expect(await maker.leaf()).toBe(lost.at(-1)! + 1);
        expect(await maker.text("notices")).toContain(`(leaf ${lost[0]})`);
        const expected = shownOf(fixturePattern(slug, lost), lost.at(-1)! + 1);
        expect(await maker.walk()).toEqual(expected);
        expect(expected).not.toEqual(shownOf(fixturePattern(slug), lost.at(-1)! + 1));
        await maker.goTo("leaf", 1);
        const before = (await maker.walk()).filter((one) => one.leaf < lost[0]!);
        expect(before).toEqual(shownOf(fixturePattern(slug)).filter((one) => one.leaf < lost[0]!));
        expect(new URL(maker.page.url()).searchParams.get("lost")).toBe(lost.join("_"));
      },
    );

    it("shows beforehand what changes: the leaves in words and the front before and after; cancelling does nothing", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 40);
      const before = await kept();
      await maker.press("lose");
      const [now, then] = [fixturePattern("little-gull"), fixturePattern("little-gull", [40])];
      const changed = then.leaves.filter((leaf) => {
        const was = now.leaves.find((one) => one.leaf === leaf.leaf)!;
        return JSON.stringify(was.spans) !== JSON.stringify(leaf.spans);
      });
      const words = await maker.text("recovery-words");
      expect(await maker.text("recovery-title")).toBe("Leave p. 75 (leaf 40) out?");
      expect(words).toContain(
        `${changed.length} leaves change, starting with p. ${changed[0]!.bookPage} (leaf ${changed[0]!.leaf})`,
      );
      const { slug, title } = fixtureKit("little-gull");
      const drawn = (name: string) =>
        maker.page.$eval(`[data-picture-${name}]`, async (image) => {
          const picture = image as HTMLImageElement;
          await picture.decode();
          const canvas = document.createElement("canvas");
          [canvas.width, canvas.height] = [160, 200];
          const pen = canvas.getContext("2d")!;
          pen.drawImage(picture, 0, 0, 160, 200);
          return [...pen.getImageData(0, 0, 160, 200).data];
        });
      const wanted = (pattern: typeof now) =>
        maker.page.evaluate(
          async (svg) => {
            const picture = new Image();
            picture.src = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
            await picture.decode();
            const canvas = document.createElement("canvas");
            [canvas.width, canvas.height] = [160, 200];
            const pen = canvas.getContext("2d")!;
            pen.drawImage(picture, 0, 0, 160, 200);
            return [...pen.getImageData(0, 0, 160, 200).data];
          },
          frontPicture(pattern, { slug, title, mood: "day" }),
        );
      const [left, right] = [await drawn("before"), await drawn("after")];
      expect(left).toEqual(await wanted(now));
      expect(right).toEqual(await wanted(then));
      expect(right).not.toEqual(left);
      await maker.page.keyboard.press("Escape");
      expect(await kept()).toEqual(before);
    });

    it("warns that ticks of leaves that change would go, takes them off, and gives all back when it is undone", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 60);
      await maker.answer("They are folded");
      await maker.goTo("leaf", 40);
      const before = await kept();
      await maker.press("lose");
      const warned = /(\d+) of them are ticked and would lose their ticks/.exec(await maker.text("recovery-words"))!;
      await maker.press("recovery-do");
      // The lost leaf's own tick goes, too.
      expect(await maker.done()).toBe(59 - Number(warned[1]) - 1);
      await maker.open(GULL);
      expect(await maker.done()).toBe(59 - Number(warned[1]) - 1);
      await maker.answer("Put it back in");
      expect(await maker.text("recovery-title")).toBe("Put p. 75 (leaf 40) back in?");
      await maker.press("recovery-do");
      expect([await maker.leaf(), await maker.done()]).toEqual([40, 59]);
      const { clock, ...after } = await kept();
      const { clock: began, ...was } = before;
      expect(after).toEqual(was);
      expect(clock.worked).toBeGreaterThanOrEqual(began.worked);
      expect(new URL(maker.page.url()).searchParams.has("lost")).toBe(false);
      await maker.goTo("leaf", 1);
      expect(await maker.walk()).toEqual(shownOf(fixturePattern("little-gull")));
    });

    it("takes a leaf back in from the menu, too", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 50);
      await loseHere();
      await maker.goToStep("Open to the hold width");
      await maker.press("open-menu");
      expect(await maker.text("lost-list")).toContain("p. 95 (leaf 50)");
      await maker.page.click("[data-lost-list] button");
      await maker.press("recovery-do");
      expect(await maker.leaf()).toBe(50);
    });

    it("says why a border leaf cannot be left out", async () => {
      await maker.open(GULL);
      await maker.press("lose");
      expect(await textOf(maker.page, "[data-recovery-words]")).toContain(
        "A border leaf that is left out changes nothing in the picture.",
      );
      expect(await maker.page.$eval("[data-recovery-do]", (one) => one.checkVisibility())).toBe(false);
    });
  });
}
