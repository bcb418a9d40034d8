import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";
import { toBench } from "../pieces/piece-reader.ts";
import { GULL, type Maker, newMaker } from "./bench-reader.ts";

/** A piece as a file: out of one browser, into another. */
export function fileSuite(served: () => OpenedSite): void {
  describe("the bench's file of a piece", () => {
    let maker: Maker;
    let folder: string;
    beforeEach(async () => {
      maker = await newMaker(served());
      folder = mkdtempSync(join(tmpdir(), "leaflight-file-"));
    });
    afterEach(async () => {
      await maker.close();
      rmSync(folder, { recursive: true, force: true });
    });

    const save = async ({ page, context, press }: Maker, name: string): Promise<string> => {
      const client = await page.createCDPSession();
      await client.send("Browser.setDownloadBehavior", {
        behavior: "allow",
        browserContextId: context.id!,
        downloadPath: folder,
      });
      await press("open-menu");
      await press("export");
      const path = join(folder, name);
      for (let i = 0; i < 1200 && !existsSync(path); i += 1) await new Promise((resolve) => setTimeout(resolve, 50));
      return path;
    };
    const takeIn = async ({ page }: Maker, path: string): Promise<string> => {
      await visit(served(), page, "pieces/index.html");
      await page.waitForSelector("[data-pieces-files]:not([hidden])");
      const field = await page.$("[data-pieces-import]");
      await (field as unknown as { uploadFile: (path: string) => Promise<void> }).uploadFile(path);
      return textOf(page, "[data-pieces-answer]");
    };
    const all = async (one: Maker) => {
      await one.goTo("leaf", 1);
      return { done: await one.done(), shown: await one.walk(), address: new URL(one.page.url()).search };
    };

    it("brings ticks, answered prompts, lost leaves and the measured batch to a fresh browser", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 30);
      await maker.answer("They are folded");
      await maker.press("lose");
      await maker.press("recovery-do");
      await maker.press("open-menu");
      await maker.press("menu-measure");
      await maker.page.type("[data-measure-thickness]", "6");
      await maker.page.keyboard.press("Enter");
      const before = await all(maker);
      expect(before.done).toBe(29);
      expect(before.address).toMatch(/bulk=.*lost=30/);
      const path = await save(maker, "little-gull-piece-1.json");
      expect(JSON.parse(readFileSync(path, "utf8"))).toMatchObject({
        schema: "leaflight/pieces/1",
        pieces: [{ kit: "little-gull", number: 1 }],
      });

      const other = await newMaker(served());
      try {
        expect(await takeIn(other, path)).toBe("little-gull-piece-1.json: 1 piece added.");
        await toBench(other, "[data-pieces-list] .button");
        await other.press("open-menu");
        expect(await other.text("lost-list")).toContain("leaf 30");
        await other.page.keyboard.press("Escape");
        expect(await all(other)).toEqual(before);
        await other.open(GULL);
        expect(await all(other)).toEqual(before);
      } finally {
        await other.close();
      }
    });

    it.each([
      ["notes.json", "leaf,page\n1,2\n", /cannot be opened\. It is not JSON/],
      [
        "list.json",
        '{"schema":"leaflight/pattern/2"}',
        /not a file of pieces or progress of this version: its schema is "leaflight\/pattern\/2"/,
      ],
      ["cut.json", '{"schema":"leaflight/progress/1","kit":"little', /it may be cut short/],
    ])("refuses %s, says why and changes nothing", async (name, text, why) => {
      await maker.open(GULL);
      await maker.press("go");
      writeFileSync(join(folder, name), text);
      const answer = await takeIn(maker, join(folder, name));
      expect(answer).toContain(name);
      expect(answer).toMatch(why);
      await maker.open(GULL);
      expect([await maker.done(), await maker.leaf()]).toEqual([1, 2]);
    });

    it("starts again only after she said yes", async () => {
      await maker.open(GULL);
      await maker.press("go");
      const said: string[] = [];
      const replies = [false, true];
      maker.page.on("dialog", (dialog) => {
        said.push(dialog.message());
        void (replies[said.length - 1] ? dialog.accept() : dialog.dismiss());
      });
      await maker.press("open-menu");
      await maker.press("anew");
      expect(await maker.done()).toBe(1);
      await maker.press("anew");
      expect([await maker.done(), await maker.text("big")]).toEqual([0, "Check the book"]);
      expect(said).toEqual(
        Array(2).fill("Clear the tick of 1 leaf and of all other work, and start this piece again?"),
      );
    });
  });
}
