import { describe, expect, it } from "vitest";
import type { OpenedSite } from "../../site/shared-site.ts";
import { textOf, visit } from "../../site/visit.ts";
import { GULL, newMaker } from "../bench/bench-reader.ts";
import { linesOf, recordsOf } from "./piece-reader.ts";

/** What version 0.1.0 kept of a kit's own book and of a reader's: its keys and texts, written down from it. */
const EARLIER = {
  "leaflight-bench/1/little-gull/":
    '{"schema":"leaflight/progress/1","kit":"little-gull","fit":"","revision":"0","at":4,"ticks":[[1,0],[2,60000],[3,55000]],"passed":["batch 1"],"lost":[],"clock":{"worked":115000,"seen":1759519200000,"ticked":115000}}\n',
  "leaflight-bench/1/little-gull/thick=14&leaves=128":
    '{"schema":"leaflight/progress/1","kit":"little-gull","fit":"thick=14&leaves=128","revision":"0","at":6,"ticks":[[1,0],[2,0],[3,0],[4,0],[5,0]],"passed":[],"lost":[],"clock":{"worked":9000,"seen":1759605600000,"ticked":9000}}\n',
};

/** What earlier versions kept. */
export function takeOverSuite(served: () => OpenedSite): void {
  describe("what an earlier version kept", () => {
    const withEarlier = async () => {
      const maker = await newMaker(served());
      await visit(served(), maker.page, "offline.html");
      await maker.page.evaluate((kept) => {
        for (const [key, text] of Object.entries(kept)) localStorage.setItem(key, text);
      }, EARLIER);
      return maker;
    };

    it("becomes pieces on the first visit, once, and nothing of it is lost", async () => {
      const maker = await withEarlier();
      await visit(served(), maker.page, "index.html");
      await maker.page.waitForSelector(".continue-card");
      expect(await linesOf(maker.page, ".continue-card .button")).toEqual([
        "Continue: 5 leaves folded",
        "Continue: 3 leaves folded",
      ]);
      expect(await linesOf(maker.page, ".continue-title")).toEqual(["Little Gull: Piece 2", "Little Gull: Piece 1"]);
      const keys = await maker.page.evaluate(() => Object.keys(localStorage));
      expect(keys.filter((key) => key.startsWith("leaflight-bench/"))).toEqual([]);
      await visit(served(), maker.page, "index.html");
      await maker.page.waitForSelector(".continue-card");
      expect(await recordsOf(maker.page)).toHaveLength(2);
      await maker.close();
    });

    it.each([
      ["", 3, "60000"],
      ["?thick=14&leaves=128", 5, "0"],
    ])("opens at the bench of its book %s with every tick", async (address, done, took) => {
      const maker = await withEarlier();
      await visit(served(), maker.page, GULL + (address === "" ? "?lost=" : address));
      await textOf(maker.page, "[data-ticked]", /done/);
      const records = await recordsOf(maker.page);
      const mine = records.find((one) => one.address === address.slice(1))!;
      expect(mine.progress.ticks).toHaveLength(done);
      expect(JSON.stringify(mine.progress.ticks[1])).toBe(`[2,${took}]`);
      await maker.close();
    });
  });
}
