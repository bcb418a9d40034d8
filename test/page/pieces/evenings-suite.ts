import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";
import { GULL, type Maker, newMaker } from "../bench/bench-reader.ts";
import { linesOf, recordsOf, toBench } from "./piece-reader.ts";

const KIT = "kits/little-gull/index.html";
const WORK_ALONG = 'a[data-to="bench/index.html"]';

/** A phone as its maker holds it. */
const PHONE = { width: 390, height: 844, isMobile: true, hasTouch: true, deviceScaleFactor: 2 };

/** A piece over several evenings, on a phone. */
export function eveningsSuite(served: () => OpenedSite): void {
  describe("two evenings", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served(), { keeps: true });
      await maker.page.setViewport(PHONE);
    });
    afterEach(() => maker.close());

    /** From the kit's page with a reader's book to the bench, where some leaves are folded. */
    const firstEvening = async (leaves: number): Promise<void> => {
      const { page } = maker;
      await visit(served(), page, "index.html");
      await visit(served(), page, `${KIT}?leaves=128&thick=14`);
      await textOf(page, "[data-kept]", /works offline/);
      await page.waitForFunction(
        (link) => document.querySelector<HTMLAnchorElement>(link)!.href.includes("leaves=128"),
        {},
        WORK_ALONG,
      );
      await toBench(maker, WORK_ALONG);
      await maker.open(`${GULL}${new URL(page.url()).search}`);
      for (let i = 0; i < leaves; i += 1) await maker.press("go");
    };

    it("are one piece, the second from the catalogue and offline", async () => {
      await firstEvening(9);
      const before = [await maker.leaf(), await maker.done(), await maker.text("big")];
      await maker.page.close();
      await served().host.stop();
      try {
        const page = await maker.context.newPage();
        await page.setViewport(PHONE);
        await visit(served(), page, "index.html");
        expect(await textOf(page, ".continue-card .button")).toMatch(
          new RegExp(`^Continue: page ${String(before[2])}, \\d+%$`),
        );
        expect(await linesOf(page, ".continue-title")).toEqual(["Little Gull: Piece 1"]);
        const again = { ...maker, page };
        await toBench(again, ".continue-card .button");
        const text = (name: string): Promise<string> => page.$eval(`[data-${name}]`, (one) => one.textContent!.trim());
        expect([Number(await text("leaf")), Number.parseInt(await text("ticked"), 10), await text("big")]).toEqual(
          before,
        );
        const { searchParams } = new URL(page.url());
        expect([searchParams.get("leaves"), searchParams.get("thick")]).toEqual(["128", "14"]);
        await page.$eval("[data-go]", (go) => (go as HTMLElement).click());
        await page.waitForFunction(
          (done) => document.querySelector("[data-ticked]")!.textContent!.startsWith(done),
          {},
          `${Number(before[1]) + 1} `,
        );
        expect(await recordsOf(page)).toHaveLength(1);
      } finally {
        await served().host.start();
      }
    });

    it("are one piece where the second begins on the kit’s page, on whatever book that stands", async () => {
      await firstEvening(4);
      const before = [await maker.leaf(), await maker.done()];
      await visit(served(), maker.page, KIT);
      await textOf(maker.page, ".continue-card .button", /^Continue: /);
      await toBench(maker, WORK_ALONG);
      expect([await maker.leaf(), await maker.done()]).toEqual(before);
      expect(await maker.text("piece")).toMatch(/^You go on with Piece 1, last worked on /);
      expect(await recordsOf(maker.page)).toHaveLength(1);
    });

    it("are nothing to go on with after a look alone, and none once all is done", async () => {
      await visit(served(), maker.page, GULL);
      await maker.page.waitForSelector("[data-edge]");
      await maker.press("next");
      await visit(served(), maker.page, "index.html");
      expect(await maker.page.$eval("[data-continue]", (place) => (place as HTMLElement).hidden)).toBe(true);
      await maker.open(GULL);
      await maker.page.evaluate(goToEnd);
      await maker.answer("They are folded");
      await maker.answer("They are done");
      await maker.press("go");
      await visit(served(), maker.page, "pieces/index.html");
      await textOf(maker.page, ".piece-item .note", /finished/);
      await visit(served(), maker.page, "index.html");
      await new Promise((resolve) => setTimeout(resolve, 500));
      expect(await linesOf(maker.page, ".continue-card")).toEqual([]);
    });

    it("may be of two pieces of one kit: another one is begun beside the first", async () => {
      await maker.open(GULL);
      await maker.press("go");
      await visit(served(), maker.page, GULL);
      await textOf(maker.page, "[data-piece]", /Begin another piece/);
      await toBench(maker, '[data-piece] a[href*="piece=new"]');
      expect(await maker.done()).toBe(0);
      await maker.press("go");
      await visit(served(), maker.page, "index.html");
      await maker.page.waitForSelector(".continue-card");
      expect((await linesOf(maker.page, ".continue-title")).sort()).toEqual([
        "Little Gull: Piece 1",
        "Little Gull: Piece 2",
      ]);
    });
  });
}

/** Runs in the page: goes on to the last leaf or step, over what is not done. */
function goToEnd(): void {
  const next = document.querySelector<HTMLButtonElement>("[data-next]")!;
  while (!next.disabled) next.click();
}
