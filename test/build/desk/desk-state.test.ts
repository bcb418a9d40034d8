import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { deskState, waitingDesk } from "../../../src/build/desk/desk-state.ts";
import { readKitEntry } from "../../../src/build/kits/read-kit-entry.ts";
import { Gathering } from "../../../src/build/library/gathering.ts";
import type { KitOutcome } from "../../../src/build/library/kit-entry.ts";
import { readFacts } from "../../../src/build/library/site-facts.ts";
import { Store } from "../../../src/build/store/store.ts";
import { inFolder } from "../../input/kit/kit-folders.ts";
import { openTestDesk, type TestDesk } from "./open-test-desk.ts";

describe("waitingDesk(base, title, language)", () => {
  let desk: TestDesk;
  beforeEach(async () => {
    desk = await openTestDesk();
  });
  afterEach(() => desk.close());

  it("lists all kits and classes by the titles that they state", () => {
    const { site, kits, classes, isBusy } = waitingDesk(desk.base, "Harbour", "en");
    expect([site.title, isBusy]).toEqual(["Harbour", true]);
    expect(kits).toMatchObject([{ slug: "moon", title: "Moon", state: "waiting", page: "/kits/moon/", messages: [] }]);
    expect(classes).toMatchObject([{ slug: "evening", title: "An evening", state: "waiting" }]);
  });

  it("has nothing on it where there is no content", () => {
    rmSync(join(desk.base, "content"), { recursive: true });
    expect(waitingDesk(desk.base, "", "en")).toMatchObject({ kits: [], classes: [], messages: [] });
  });
});

describe("deskState(library, isBusy)", () => {
  const base = join(import.meta.dirname, "../../..");
  const facts = inFolder((folder) => readFacts(base, new Gathering("stop"), new Store(folder)));
  const read = readKitEntry(join(base, "content/kits/little-gull"), facts).then((reading) => reading.read!.entry);

  const listed = async (outcome: KitOutcome, names?: ReadonlyMap<string, string>) => {
    const kits = [{ ...(await read), outcome }];
    const nothing = { classes: [], messages: [], photoMessages: [], motifs: [], fonts: [] };
    const waiting = { kits: new Set<string>(), classes: new Map<string, string[]>() };
    const settings = { title: "Harbour", language: "en" };
    return deskState({ base, settings, kits, waiting, ...nothing }, false, names).kits.find(
      ({ slug }) => slug === "little-gull",
    )!;
  };

  it("names a cover by its content, and by its kit till there is one", async () => {
    const { outcome, key } = await read;
    const names = new Map([["kits/little-gull/small.webp", "0123456789abcdef0123456789abcdef"]]);
    expect((await listed(outcome)).cover).toBe(`/covers/little-gull?${key.slice(0, 16)}`);
    expect((await listed(outcome, names)).cover).toBe("/covers/little-gull?0123456789abcdef");
  });

  it("calls a kit fine that comes out well, whatever is remarked of it", async () => {
    const { outcome, warnings } = await read;
    expect(warnings).toHaveLength(1);
    expect(await listed(outcome)).toMatchObject({ state: "fine", warnings });
  });

  it.each(["check", "poor"] as const)("has one looked at that comes out as %s, and says first why", async (quality) => {
    const { warnings } = await read;
    const troubles = ["Sides of prouder leaves hide most of “well”."];
    expect(await listed({ quality, troubles })).toMatchObject({ state: "look", warnings: [...troubles, ...warnings] });
  });
});
