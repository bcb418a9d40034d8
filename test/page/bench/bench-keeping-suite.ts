import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openOwnSite } from "../../site/own-site.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";
import { fixturePattern, shownOf } from "./bench-pattern.ts";
import { GULL, type Maker, MOON, newMaker } from "./bench-reader.ts";

/** Progress through reloads, without network, through an update, and apart for each fit. */
export function keepingSuite(served: () => OpenedSite): void {
  describe("progress that is kept", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
    });
    afterEach(() => maker.close());

    const foldSome = async (count: number, by: Maker = maker) => {
      for (let i = 0; i < count; i += 1) await by.press("go");
    };
    /** A visited kit is kept by the site's worker, its bench with it. */
    const visitKit = async (site: OpenedSite, by: Maker) => {
      await visit(site, by.page, "index.html");
      await visit(site, by.page, "kits/little-gull/index.html");
      await textOf(by.page, "[data-kept]", /works offline/);
    };

    it("stays through a reload, at the same leaf", async () => {
      await maker.open(GULL);
      await foldSome(5);
      await maker.press("next");
      await maker.open(GULL);
      expect([await maker.leaf(), await maker.done()]).toEqual([7, 5]);
    });

    it("is apart for each fit and kit, whatever the order in the address, and shared by both units", async () => {
      await maker.open(GULL);
      await foldSome(3);
      await maker.open(`${GULL}?leaves=128&thick=14`);
      expect(await maker.done()).toBe(0);
      await foldSome(2);
      await maker.open(MOON);
      expect(await maker.done()).toBe(0);
      await maker.open(`${GULL}?thick=14.0&leaves=128&units=in`);
      expect(await maker.done()).toBe(2);
    });

    it("of the last piece comes where the address says no book, and the page says so and leads to the other", async () => {
      await maker.open(GULL);
      await foldSome(3);
      await maker.open(`${GULL}?leaves=128&thick=14`);
      await foldSome(2);
      await maker.open(GULL);
      expect(await maker.done()).toBe(2);
      expect(await maker.text("piece")).toMatch(
        /^You go on with Piece 2, .* It is made in the book that you measured\./,
      );
      expect(new URL(maker.page.url()).search).toContain("leaves=128");
      const other = await maker.page.$eval("[data-piece] a", (link) => (link as HTMLAnchorElement).href);
      await maker.page.goto(other);
      await maker.page.waitForSelector("[data-edge] svg");
      expect([await maker.done(), await maker.text("piece")]).toEqual([3, "Piece 1"]);
    });

    it("stays with the book that its piece was begun in, whatever book stands beside its name", async () => {
      await maker.open(`${GULL}?leaves=128&thick=14`);
      await foldSome(2);
      const id = new URL(maker.page.url()).searchParams.get("piece")!;
      await maker.open(`${GULL}?piece=${id}&leaves=120`);
      expect([await maker.done(), new URL(maker.page.url()).searchParams.get("leaves")]).toEqual([2, "128"]);
      expect(await maker.text("piece")).toMatch(/^Piece 1 is made in another book than this address says/);
      const begin = await maker.page.$$eval("[data-piece] a", (links) => (links[0] as HTMLAnchorElement).href);
      expect(new URL(begin).search).toBe("?piece=new&leaves=120");
      await maker.open(`${GULL}?piece=nothere&leaves=128&thick=14`);
      expect(await maker.text("piece")).toContain("The piece that this address names is not on this device.");
      expect(await maker.done()).toBe(2);
    });

    it("of an earlier version that is damaged stays where it is, and the bench says so", async () => {
      const KEY = "leaflight-bench/1/little-gull/";
      await maker.page.evaluateOnNewDocument((key) => localStorage.setItem(key, "{"), KEY);
      await maker.open(GULL);
      expect(await maker.text("notices")).toContain(
        "The progress saved in this browser cannot be read, so you are starting again. It is not JSON",
      );
      expect(await maker.done()).toBe(0);
      expect(await maker.page.evaluate((key) => localStorage.getItem(key), KEY)).toBe("{");
    });

    it("says so when a piece is damaged, and when nothing can be kept", async () => {
      await maker.open(GULL);
      await foldSome(1);
      await maker.page.evaluate(damagePieces);
      await maker.open(GULL);
      expect(await maker.text("notices")).toContain("cannot be read, so you are starting again. progress is 7");
      expect(await maker.done()).toBe(0);
      await maker.page.evaluate(() => {
        IDBObjectStore.prototype.put = () => {
          throw new DOMException("full", "QuotaExceededError");
        };
      });
      await foldSome(1);
      await textOf(maker.page, "[data-notices]", /This browser cannot save your progress/);
    });

    it("follows another tab of the same kit and fit", async () => {
      await maker.open(GULL);
      const other = await maker.context.newPage();
      await other.goto(served().host.site + GULL, { waitUntil: "load" });
      await other.waitForSelector("[data-edge] svg");
      await other.$eval("[data-go]", (go) => (go as HTMLElement).click());
      await textOf(maker.page, "[data-ticked]", /^1 done/);
      expect(await maker.leaf()).toBe(2);
    });

    it("stays when the network is lost, and work goes on without it", async () => {
      await maker.close();
      maker = await newMaker(served(), { keeps: true });
      await visitKit(served(), maker);
      await maker.open(GULL);
      await foldSome(4);
      await served().host.stop();
      try {
        await maker.open(GULL);
        expect([await maker.leaf(), await maker.done()]).toEqual([5, 4]);
        await foldSome(2);
        await maker.goTo("leaf", 40);
        await maker.press("lose");
        await maker.press("recovery-do");
        expect(await maker.walk()).toEqual(shownOf(fixturePattern("little-gull", [40]), 41));
      } finally {
        await served().host.start();
      }
      await maker.open(GULL);
      expect(await maker.done()).toBe(6);
    });

    it("goes on with the pattern it was begun with after an update, and changes over only when she says so", async () => {
      const own = await openOwnSite({ kits: ["little-gull"], options: ["--no-packets"] });
      const its = await newMaker(own, { keeps: true });
      try {
        await visitKit(own, its);
        await its.open(GULL);
        await foldSome(4, its);
        own.change("content/kits/little-gull/index.md", "height: 125", "height: 122");
        await own.rebuild();
        await its.open(GULL);
        expect(await its.text("notices")).toBe("");
        await textOf(its.page, ".newer", /A newer version is ready/);
        await Promise.all([its.page.waitForNavigation(), its.page.click(".newer button")]);
        await its.page.waitForSelector("[data-edge] svg");
        expect([await its.leaf(), await its.done()]).toEqual([5, 4]);
        expect(await its.text("piece")).toMatch(
          /^This kit has a newer version, with other marks on \d+ leaves, starting with/,
        );
        expect(await its.walk()).toEqual(shownOf(fixturePattern("little-gull"), 5));
        await its.goTo("leaf", 5);
        its.page.on("dialog", (dialog) => dialog.accept());
        await Promise.all([
          its.page.waitForNavigation(),
          its.page.$$eval(".newer-kit button", (buttons) => (buttons.at(-1) as HTMLElement).click()),
        ]);
        await its.page.waitForSelector("[data-edge] svg");
        const made = JSON.parse(await its.page.evaluate(async () => (await fetch("../pattern.json")).text())) as {
          leaves: { leaf: number; cuts: { at: number }[] }[];
        };
        const shown = await its.walk();
        const marks = (leaf: number) => made.leaves.find((one) => one.leaf === leaf)!.cuts.length;
        expect(shown.map(({ leaf, marks: own }) => [leaf, own.length])).toEqual(
          shown.map(({ leaf }) => [leaf, marks(leaf)]),
        );
        expect(await its.text("piece")).not.toContain("newer version");
      } finally {
        await its.close();
        await own.close();
      }
    });
  });
}

/** Runs in the page: spoils what is kept of every piece. */
async function damagePieces(): Promise<void> {
  const done = <T>(request: IDBRequest<T>): Promise<T> =>
    new Promise((resolve) => {
      request.onsuccess = () => resolve(request.result);
    });
  const base = await done(indexedDB.open("leaflight"));
  const store = base.transaction("pieces", "readwrite").objectStore("pieces");
  for (const piece of (await done(store.getAll())) as object[]) await done(store.put({ ...piece, progress: 7 }));
  base.close();
}
