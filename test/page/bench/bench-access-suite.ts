import axe from "axe-core";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { type Maker, MOON, newMaker } from "./bench-reader.ts";

type State = (maker: Maker) => Promise<void>;

const fold =
  (leaf: number): State =>
  async (maker) => {
    await maker.goTo("leaf", leaf);
    await maker.answer("They are folded");
  };

/** What the bench can look like. */
const STATES: Readonly<Record<string, State>> = {
  "a border leaf": async () => {},
  "a leaf with marks and notch": fold(96),
  "a batch prompt over open leaves": (maker) => maker.goTo("leaf", 13),
  "a checkpoint": fold(72),
  "the measuring prompt": fold(33),
  "a leaf left out": async (maker) => {
    await maker.goTo("leaf", 60);
    await maker.press("lose");
    await maker.press("recovery-do");
  },
  "the jump dialog with a problem": (maker) => maker.goTo("page", 4000),
  "the recovery dialog": async (maker) => {
    await maker.goTo("leaf", 60);
    await maker.press("lose");
  },
  "the measuring dialog with a result": async (maker) => {
    await maker.press("open-menu");
    await maker.press("menu-measure");
    await maker.page.type("[data-measure-thickness]", "14");
  },
  "the measuring dialog with a mistake": async (maker) => {
    await maker.press("open-menu");
    await maker.press("menu-measure");
    await maker.page.type("[data-measure-thickness]", "1");
  },
  "a time to stop, and a tap that goes on": async (maker) => {
    await fold(96)(maker);
    await maker.press("open-menu");
    await maker.press("tap");
    await maker.page.$eval("[data-stop-at]", (field) => {
      (field as HTMLInputElement).value = "23:59";
      field.dispatchEvent(new Event("change"));
    });
    await maker.page.$eval("[data-menu] [data-close]", (close) => (close as HTMLElement).click());
    await maker.press("go");
  },
  "the menu": (maker) => maker.press("open-menu"),
  "a score line": (maker) => maker.press("back"),
  "notches of a batch, others open": (maker) => maker.goToStep("Notch for the light"),
  "glue that dries": async (maker) => {
    await maker.goToStep("Glue the base frame and let it dry");
    await maker.press("go");
  },
  "all done": async (maker) => {
    await fold(204)(maker);
    await maker.press("go");
    await maker.goToStep("Set the light");
    await maker.answer("They are done");
    await maker.press("go");
  },
};

/** WCAG 2.2 AA. Sources beside the checks. */
export function accessSuite(served: () => OpenedSite): void {
  describe("the bench for everyone", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
    });
    afterEach(() => maker.close());

    // Source: axe-core's rules after WCAG 2.
    const judge = () =>
      maker.page.evaluate(async () => {
        const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document);
        return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
      });

    // Sources: WCAG 2.2, 1.4.10 Reflow for 320 px; 1.4.4 Resize Text for 200 %, here on a phone and a tablet.
    const SIZES = [
      [320, 640, 100],
      [390, 844, 100],
      [390, 844, 200],
      [768, 1024, 200],
      [844, 390, 100],
      [640, 360, 100],
      [1024, 768, 100],
      [1440, 900, 100],
    ] as const;
    const spilt = async ([width, height, percent]: (typeof SIZES)[number]) => {
      await maker.page.setViewport({ width, height });
      await maker.page.evaluate((size) => {
        document.documentElement.style.fontSize = `${size}%`;
      }, percent);
      // The drawing follows the room once it changed.
      await maker.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      return (await maker.page.evaluate(findSpill)).map((what) => `${width} px, ${percent} %: ${what}`);
    };

    it.each(Object.keys(STATES))(
      "%s: axe finds nothing, light or dark; nothing spills at eight sizes, also with letters twice as large",
      async (name) => {
        await maker.page.setViewport({ width: 390, height: 844 });
        await maker.open(MOON);
        await STATES[name]!(maker);
        await maker.page.evaluate(axe.source);
        const found: string[] = [];
        for (const value of ["light", "dark"]) {
          await maker.page.emulateMediaFeatures([{ name: "prefers-color-scheme", value }]);
          found.push(...(await judge()).map((what) => `${value}: ${what}`));
        }
        for (const size of SIZES) found.push(...(await spilt(size)));
        expect(found).toEqual([]);
      },
    );

    // Source: WCAG 2.2, 2.5.8 Target Size (Minimum): 24 px; ours are for fingers at work.
    it.each([320, 1440])("has controls of at least 44 px at %d px", async (width) => {
      await maker.page.setViewport({ width, height: 800 });
      await maker.open(MOON);
      await maker.goTo("leaf", 13);
      const small = await maker.page.$$eval(
        "a, button, label.tick, select, input:not([type=file], [type=checkbox])",
        (all) =>
          all
            .filter((one) => one.checkVisibility())
            .map((one) => [one.textContent!.trim(), one.getBoundingClientRect()] as const)
            .filter(([, box]) => box.height < 43.9 || box.width < 43.9)
            .map(([words, box]) => `${words} ${box.width} × ${box.height}`),
      );
      expect(small).toEqual([]);
    });

    // Source: Media Queries 5, prefers-reduced-motion.
    it("moves nothing when motion is to be reduced", async () => {
      const moving = () =>
        maker.page.$$eval(
          "*",
          (all) =>
            all.filter((one) =>
              /[1-9]/.test(`${getComputedStyle(one).transitionDuration} ${getComputedStyle(one).animationDuration}`),
            ).length,
        );
      await maker.page.emulateMediaFeatures([{ name: "prefers-reduced-motion", value: "no-preference" }]);
      await maker.open(MOON);
      expect(await moving()).toBeGreaterThan(0);
      await maker.page.emulateMediaFeatures([{ name: "prefers-reduced-motion", value: "reduce" }]);
      expect(await moving()).toBe(0);
    });
  });
}

/** What reaches out of the window, out of its own box, or out of the drawing's room. Runs in the page. */
function findSpill(): string[] {
  const { clientWidth, scrollWidth } = document.documentElement;
  const name = (one: Element): string => `${one.tagName} ${one.className} ${one.textContent!.trim().slice(0, 40)}`;
  const seen = [...document.querySelectorAll<HTMLElement>("body *")].filter(
    (one) => one.checkVisibility() && !one.closest(".sr, svg"),
  );
  const out = seen.filter((one) => one.getBoundingClientRect().right > clientWidth + 1);
  const cut = seen.filter(
    (one) =>
      one.matches("button, dialog, p, li, dd, dt, h2, label, .home, .big-figure") &&
      !one.matches(".file") &&
      one.scrollWidth > one.clientWidth + 1 &&
      one.clientWidth > 0 &&
      getComputedStyle(one).display !== "inline",
  );
  const edge = document.querySelector(".edge")!.getBoundingClientRect();
  const lost = [...document.querySelectorAll(".edge text")].filter((one) => {
    const box = one.getBoundingClientRect();
    return (
      box.left < edge.left - 1 || box.right > edge.right + 1 || box.top < edge.top - 2 || box.bottom > edge.bottom + 2
    );
  });
  return [
    ...(scrollWidth > clientWidth ? [`the page is ${scrollWidth} px wide`] : []),
    ...out.map((one) => `beyond the window: ${name(one)}`),
    ...cut.map((one) => `wider than its box: ${name(one)}`),
    ...lost.map((one) => `out of the drawing: ${one.textContent}`),
  ];
}
