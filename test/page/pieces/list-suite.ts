import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import axe from "axe-core";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";
import { GULL, type Maker, newMaker } from "../bench/bench-reader.ts";
import { fileOf, linesOf, openFile, recordsOf, toBench } from "./piece-reader.ts";

const LIST = "pieces/index.html";
const ITEM = ".piece-item";

/** The page of all pieces. */
export function listSuite(served: () => OpenedSite): void {
  describe("my pieces", () => {
    let maker: Maker;
    let folder: string;
    beforeEach(async () => {
      maker = await newMaker(served());
      folder = mkdtempSync(join(tmpdir(), "leaflight-pieces-"));
    });
    afterEach(async () => {
      await maker.close();
      rmSync(folder, { recursive: true, force: true });
    });

    const fold = async (count: number, by = maker): Promise<void> => {
      await by.open(GULL);
      for (let i = 0; i < count; i += 1) await by.press("go");
    };
    const list = async (by = maker): Promise<void> => {
      await visit(served(), by.page, LIST);
      await by.page.waitForSelector("[data-pieces-files]:not([hidden])");
    };

    it("say what to do while there is none", async () => {
      await list();
      expect(await maker.page.$eval("[data-pieces-empty]", (one) => (one as HTMLElement).checkVisibility())).toBe(true);
      expect(await linesOf(maker.page, ITEM)).toEqual([]);
    });

    it("take a name and notes, which the bench and the catalogue say, and keep them while work goes on", async () => {
      await fold(2);
      await list();
      await maker.page.$eval(`${ITEM} summary`, (one) => (one as HTMLElement).click());
      await maker.page.type(`${ITEM} input`, "For the <b>door</b>");
      await maker.page.type(`${ITEM} textarea`, "New blade at page 31");
      await maker.page.keyboard.press("Tab");
      await textOf(maker.page, `${ITEM} .piece-notes`, /^New blade at page 31$/);
      await textOf(maker.page, `${ITEM} h2`, /^For the <b>door<\/b>$/);
      await toBench(maker, `${ITEM} .button`);
      expect(await maker.text("piece")).toBe("For the <b>door</b>");
      await maker.press("go");
      expect(await recordsOf(maker.page)).toMatchObject([
        { name: "For the <b>door</b>", notes: "New blade at page 31" },
      ]);
      await visit(served(), maker.page, "index.html");
      await textOf(maker.page, ".continue-title", /^Little Gull: For the <b>door<\/b>$/);
    });

    it("go only after she said yes", async () => {
      await fold(3);
      await list();
      const said: string[] = [];
      maker.page.on("dialog", (dialog) => {
        said.push(dialog.message());
        void (said.length === 1 ? dialog.dismiss() : dialog.accept());
      });
      const remove = (): Promise<void> => maker.page.$eval(`${ITEM} button`, (one) => (one as HTMLElement).click());
      await remove();
      expect(await linesOf(maker.page, ITEM)).toHaveLength(1);
      await remove();
      await maker.page.waitForSelector("[data-pieces-empty]:not([hidden])");
      expect(said[0]).toBe("Remove Piece 1 with 3 folded leaves from this device? A file of it is the only way back.");
      expect(await recordsOf(maker.page)).toEqual([]);
    });

    it("of a kit that is no longer in this site stay, with a way to save them", async () => {
      await fold(1);
      const [piece] = await recordsOf(maker.page);
      const gone = { ...piece!, id: "gone", kit: "old-boat", progress: { ...piece!.progress, kit: "old-boat" } };
      await list();
      await openFile(maker.page, fileOf(folder, "old.json", [gone]));
      await textOf(maker.page, ".piece-gone", /no longer in this site/);
      const links = await maker.page.$$eval(`${ITEM}[data-id=gone] a`, (all) => all.map((one) => one.textContent));
      expect(links).toEqual(["Save as a file"]);
      await visit(served(), maker.page, "index.html");
      await maker.page.waitForSelector(".continue-card");
      expect(await linesOf(maker.page, ".continue-card")).toHaveLength(1);
    });

    /** The piece on a second device, where two more leaves are folded; here are folded `here` more. */
    const twoDevices = async (here: number): Promise<string> => {
      await fold(3);
      const first = await recordsOf(maker.page);
      const other = await newMaker(served());
      await list(other);
      await openFile(other.page, fileOf(folder, "first.json", first));
      await textOf(other.page, "[data-pieces-answer]", /1 piece added/);
      await fold(2, other);
      const file = fileOf(folder, "second.json", await recordsOf(other.page));
      await other.close();
      if (here > 0) await fold(here);
      await list();
      await openFile(maker.page, file);
      return file;
    };
    const folded = async (): Promise<number[]> =>
      (await recordsOf(maker.page)).map(({ progress }) => progress.ticks.length).sort();

    it("are brought up to date by a file that knows all that was done here", async () => {
      await twoDevices(0);
      expect(await textOf(maker.page, "[data-pieces-answer]")).toBe("second.json: 1 piece brought up to date.");
      expect(await folded()).toEqual([5]);
    });

    it.each([
      ["here", [4], "second.json: 1 piece left as it was here."],
      ["file", [5], "second.json: 1 piece brought up to date."],
      ["both", [4, 5], "second.json: 1 piece added."],
    ] as const)("changed on two devices never overwrite each other: she chooses %s", async (choice, after, answer) => {
      const file = await twoDevices(1);
      await textOf(maker.page, "[data-meeting-title]", /Little Gull: Piece 1 is on this device, too/);
      expect(await textOf(maker.page, "[data-meeting-here]")).toMatch(/^Here: 4 of \d+ leaves folded, last worked on /);
      expect(await textOf(maker.page, "[data-meeting-file]")).toMatch(/^In the file: 5 of \d+ leaves folded/);
      expect(await folded()).toEqual([4]);
      await maker.page.click(`[data-meeting] [value=${choice}]`);
      expect(await textOf(maker.page, "[data-pieces-answer]")).toBe(answer);
      expect(await folded()).toEqual(after);
      if (choice === "both") return;
      // What was decided holds: the same file has nothing new.
      await openFile(maker.page, file);
      await textOf(maker.page, "[data-meeting-why]", /older than what is here/);
      await maker.page.keyboard.press("Escape");
      await textOf(maker.page, "[data-pieces-answer]", /1 piece left as it was here/);
      expect(await folded()).toEqual(after);
    });

    it("take a file of progress that an earlier version saved", async () => {
      const text =
        '{"schema":"leaflight/progress/1","kit":"little-gull","fit":"leaves=128","revision":"0","at":3,"ticks":[[1,0],[2,5000]],"passed":[],"lost":[],"clock":{"worked":5000,"seen":1759519200000,"ticked":5000}}\n';
      const path = join(folder, "little-gull-progress.json");
      writeFileSync(path, text);
      await list();
      await openFile(maker.page, path);
      await textOf(maker.page, "[data-pieces-answer]", /^little-gull-progress.json: 1 piece added\.$/);
      expect(await recordsOf(maker.page)).toMatchObject([{ kit: "little-gull", address: "leaves=128" }]);
      await toBench(maker, `${ITEM} .button`);
      expect(await maker.done()).toBe(2);
    });

    it("hold as long as the page where nothing can be kept, and the page says so", async () => {
      await maker.page.evaluateOnNewDocument(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException("closed", "SecurityError");
        };
      });
      await list();
      expect(await textOf(maker.page, "[data-pieces-note]")).toContain("This browser keeps nothing for this site.");
      await fold(2);
      await textOf(maker.page, "[data-notices]", /This browser cannot save your progress/);
      expect(await maker.done()).toBe(2);
    });

    it.each(["light", "dark"])("can be used by everyone (%s)", async (scheme) => {
      await maker.page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: scheme }]);
      await fold(2);
      for (const path of [LIST, "index.html"]) {
        await visit(served(), maker.page, path);
        await maker.page.waitForSelector(`${ITEM}, .continue-card`);
        await maker.page.$$eval("details", (all) => {
          for (const one of all) one.open = true;
        });
        await maker.page.evaluate(axe.source);
        const { violations } = await maker.page.evaluate(() => (window as unknown as { axe: typeof axe }).axe.run());
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
      }
    });
  });
}
