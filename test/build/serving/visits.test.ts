import { describe, expect, it } from "vitest";
import { isVisitable, Visits } from "../../../src/build/serving/visits.ts";

describe("visits of a served site", () => {
  it.each([
    ["/kits/moon/", true],
    ["/kits/moon/small.webp", true],
    ["/author/moon/", true],
    ["/classes/evening/seat-1/", true],
    ["/private/classes/evening/", true],
    ["/", false],
    ["/kits/", false],
    ["/guide/desk/", false],
    ["/assets/scripts/kit.js", true],
    ["/assets/fonts/literata.woff2", false],
  ])("%s may be made when it is asked for: %s", (path, is) => {
    expect(isVisitable(path)).toBe(is);
  });

  it.each([
    ["/kits/moon/", ["pages"]],
    ["/kits/moon/packet/large.html", ["pages"]],
    ["/kits/moon/kit-data.js", ["data"]],
    ["/kits/moon/front.svg", ["pictures"]],
    ["/kits/moon/cut/card.dxf", ["cut files"]],
    ["/kits/moon/photos/shelf.webp", ["photos"]],
    ["/kits/moon/packet-a4.pdf", ["pages", "pictures", "photos"]],
    ["/author/moon/", ["author"]],
  ])("%s takes the stages %j", (path, stages) => {
    const visits = new Visits();
    void visits.add(path);
    expect([...visits.take().kits]).toEqual([["moon", new Set(stages)]]);
  });

  it("are taken all at once, and told when they are made", async () => {
    const visits = new Visits();
    const paths = ["/kits/moon/", "/kits/moon/front.svg", "/classes/evening/", "/kits/sun/", "/assets/scripts/kit.js"];
    const all = Promise.all(paths.map((path) => visits.add(path)));
    expect(visits.isWaiting).toBe(true);
    const { kits, classes, hasScripts, settle } = visits.take();
    expect(visits.isWaiting).toBe(false);
    expect(Object.fromEntries(kits)).toEqual({ moon: new Set(["pages", "pictures"]), sun: new Set(["pages"]) });
    expect([...classes]).toEqual(["evening"]);
    expect(hasScripts).toBe(true);
    settle();
    await all;
  });
});
