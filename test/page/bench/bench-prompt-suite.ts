import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { batchesOf, isCheckpoint } from "../../../src/core/plan/batches.ts";
import { tackList } from "../../../src/core/plan/tack-list.ts";
import type { OpenedSite } from "../../site/shared-site.ts";
import { fixturePattern } from "./bench-pattern.ts";
import { GULL, type Maker, MOON, newMaker } from "./bench-reader.ts";

const MINUTE = 60_000;

/** Prompts before leaves, ticks, and the times in the head. */
export function promptSuite(served: () => OpenedSite): void {
  describe("the bench's prompts and times", () => {
    let maker: Maker;
    beforeEach(async () => {
      maker = await newMaker(served());
      await maker.page.evaluateOnNewDocument(holdTime);
    });
    afterEach(() => maker.close());

    /** Lets so much time go by, and what the page does from time to time. */
    const wait = (ms: number): Promise<void> =>
      maker.page.evaluate((by) => {
        const held = window as unknown as { late: number; everySoOften: (() => void)[] };
        held.late += by;
        for (const run of held.everySoOften) run();
      }, ms);

    it("asks before each batch and at each checkpoint of the plan, and nowhere else", async () => {
      const pattern = fixturePattern("little-gull");
      const batches = batchesOf(pattern, 20, undefined);
      // The first batch is measured before what comes next, a leaf or its tacks.
      const tacked = tackList(pattern).glued.some((tack) => tack.leaf.leaf <= batches[0]!.last.leaf);
      const expected = pattern.leaves.flatMap((leaf) => {
        const batch = batches.find((one) => one.first === leaf);
        return [
          ...(batch?.number === 2 ? [`${tacked ? "" : leaf.leaf} Batch 1 is folded.`] : []),
          ...(batch
            ? [
                `${leaf.leaf} Batch ${batch.number} of ${batches.length}: ${Math.round(batch.packing)} mm of packing under the working side.`,
              ]
            : []),
          ...(isCheckpoint(leaf)
            ? [`${leaf.leaf} Checkpoint: is this page ${leaf.bookPage}, with its first mark at ${leaf.cuts[0]!.at} mm?`]
            : []),
        ];
      });
      await maker.open(GULL);
      const asked = await maker.page.evaluate(() => {
        const part = (name: string) => document.querySelector<HTMLElement>(`[data-${name}]`)!;
        const found: string[] = [];
        for (let i = 0; i < 300 && part("go-words").textContent !== "All done"; i += 1) {
          const gate = part("gate");
          if (!gate.hidden)
            found.push(
              `${part("leaf").textContent} ${gate.querySelector("strong")!.textContent!.replaceAll("\u00a0", " ")}`,
            );
          const later = [...gate.querySelectorAll("button")].find((one) => one.textContent === "Not now");
          (later && !gate.hidden ? later : part("go")).click();
        }
        return found;
      });
      expect(asked).toEqual(expected);
      expect(asked.length).toBeGreaterThan(10);
      expect(await maker.text("notices")).toBe(
        `All ${pattern.leaves.length} leaves are folded. All other work is done, too.`,
      );
      expect(await maker.text("step")).toContain(`are ${Math.round(pattern.fit.holdWidth)}\u00a0mm apart`);
      expect(await maker.page.$eval("[data-go]", (go) => (go as HTMLButtonElement).disabled)).toBe(true);
    });

    it("does not tick while a prompt waits, and leads to the page asked for when something is off", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 18);
      expect(await maker.gate()).toContain("Checkpoint: is this page 31,");
      await maker.answer("No, something is off");
      expect(await maker.text("jump-reason")).toBe("Which page is in front of you?");
      await maker.goTo("page", 31);
      await maker.press("go");
      expect([await maker.leaf(), await maker.done(), await maker.gate()]).toEqual([18, 0, ""]);
      await maker.press("go");
      expect([await maker.leaf(), await maker.done()]).toEqual([19, 1]);
    });

    it("names open leaves before this one, leads there and ticks them on request; a tick can be taken off", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 5);
      expect(await maker.text("notices")).toContain(
        "Not ticked before this: 4 leaves, starting with front leaf 1 of 2 (leaf 1).",
      );
      await maker.answer("Go there");
      expect(await maker.leaf()).toBe(1);
      await maker.goTo("leaf", 5);
      await maker.answer("They are folded");
      expect([await maker.done(), await maker.text("notices")]).toEqual([4, ""]);
      await maker.press("back");
      await maker.press("done");
      expect([await maker.leaf(), await maker.done()]).toEqual([4, 3]);
    });

    it("goes on from the last leaf to one that is still open", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 112);
      await maker.press("done");
      await maker.press("go");
      expect(await maker.text("big")).toBe("Tack loose flaps");
      await maker.goToStep("Open to the hold width");
      await maker.press("go");
      expect(await maker.leaf()).toBe(1);
    });

    it("begins with the preparing, counts it apart from the leaves, and takes a tick off again", async () => {
      await maker.page.goto(`${served().host.site}${GULL}`, { waitUntil: "load" });
      await maker.page.waitForSelector("[data-bench]:not([hidden])");
      expect([await maker.text("big"), await maker.text("count"), await maker.done()]).toEqual([
        "Check the book",
        expect.stringMatching(/^Step 1 of \d+ beside the leaves$/),
        0,
      ]);
      await maker.page.keyboard.press("Enter");
      await maker.page.keyboard.press("Space");
      expect([await maker.text("big"), await maker.done()]).toEqual(["Make the gauge", 2]);
      await maker.page.keyboard.press("Backspace");
      await maker.press("done");
      expect([await maker.text("big"), await maker.done()]).toEqual(["Find pattern page 1", 1]);
      await maker.goTo("leaf", 1);
      expect(await maker.done()).toBe(0);
      expect(await maker.text("notices")).toContain(
        "Not done before this: 4 steps, starting with Find pattern page 1.",
      );
      await maker.answer("They are done");
      expect(await maker.text("notices")).toBe("");
      await maker.open(GULL);
      expect(await maker.leaf()).toBe(1);
    });

    it("draws a step on her own book, and none where it has no drawing", async () => {
      await maker.open(`${GULL}?leaves=128&thick=14`);
      for (let i = 0; i < 12; i += 1) await maker.press("back");
      expect(await maker.text("big")).toBe("Check the book");
      await maker.page.waitForSelector(".step-figure svg");
      expect(await maker.page.$eval(".step-figure", (place) => place.textContent)).toContain("128 leaves");
      for (let i = 0; i < 3; i += 1) await maker.press("next");
      expect(await maker.text("big-kind")).toBe("Press the score lines");
      expect(await maker.page.$$eval(".step-figure svg", (all) => all.length)).toBe(0);
    });

    it("has the notches of a batch after its leaves, each with its place, and tells until when glue dries", async () => {
      const { notches } = fixturePattern("harbour-moon").pocket!;
      await maker.open(MOON);
      await maker.goToStep("Notch for the light");
      const [first] = notches;
      expect(await maker.text("step")).toContain(`(leaf ${first!.leaf})`);
      expect(await maker.text("drying")).toBe("");
      await maker.goToStep("Glue the base frame and let it dry");
      await maker.press("go");
      const glued = /^Glue the base frame and let it dry: dry at about .*\d\d:\d\d, in 12 h 00 min\.$/;
      expect(await maker.text("drying")).toMatch(glued);
      expect(await maker.text("say")).toMatch(/^Dry at about .*\d\d:\d\d\. /);
      await maker.page.reload({ waitUntil: "load" });
      await maker.page.waitForSelector("[data-bench]:not([hidden])");
      await wait(11 * 60 * MINUTE + 30 * MINUTE);
      expect(await maker.text("drying")).toMatch(/, in 30 min\.$/);
      expect(await maker.text("dry")).toBe("");
      await wait(30 * MINUTE);
      expect([await maker.text("drying"), await maker.text("dry")]).toEqual([
        "",
        "Dry now: Glue the base frame and let it dry.",
      ]);
      await maker.press("next");
      expect(await maker.text("dry")).toBe("");
    });

    it("tells how far she comes by the time to stop, and once that is past, without a question", async () => {
      await maker.open(GULL);
      await maker.goTo("leaf", 20);
      const at = (minutes: number) =>
        maker.page.evaluate((from) => {
          const time = new Date(Date.now() + from * 60_000);
          return [time.getHours(), time.getMinutes()].map((part) => String(part).padStart(2, "0")).join(":");
        }, minutes);
      const stop = async (minutes: number) => {
        await maker.press("open-menu");
        await maker.page.$eval(
          "[data-stop-at]",
          (field, time) => {
            (field as HTMLInputElement).value = time;
            field.dispatchEvent(new Event("change"));
          },
          await at(minutes),
        );
      };
      await stop(60);
      const told = await maker.text("stop");
      expect(told).toMatch(
        /^Stop at .*\d\d:\d\d.*: about p\. \d+ \(leaf \d+\), \d+ leaves from here, by the estimate\.$/,
      );
      expect(await maker.text("stop-answer")).toBe(told);
      // By hand, in seconds: a leaf 12, each cut 10, each strip 10, a checkpoint 20; up to a minute is cut off the time of day.
      const seconds = fixturePattern("little-gull").leaves.map(
        ({ leaf, cuts, spans, patternPage }) =>
          [leaf, 12 + 10 * cuts.length + 10 * spans.length + (((patternPage ?? 0) + 1) % 20 === 0 ? 20 : 0)] as const,
      );
      const byThen = (minutes: number) => {
        const ahead = seconds.filter(([leaf]) => leaf >= 20);
        const spent = (count: number) => ahead.slice(0, count).reduce((sum, [, each]) => sum + each, 0);
        return ahead.filter((_, i) => spent(i + 1) <= 60 * minutes).length;
      };
      const count = Number(/(\d+) leaves from here/.exec(told)![1]);
      expect(count).toBeLessThanOrEqual(byThen(60));
      expect(count).toBeGreaterThanOrEqual(byThen(59) - tackList(fixturePattern("little-gull")).glued.length);
      await maker.page.keyboard.press("Escape");
      await wait(61 * MINUTE);
      expect(await maker.text("stop")).toMatch(/^You wanted to stop at .*\d\d:\d\d.*\.$/);
      expect(await maker.gate()).toBe("");
      await maker.press("open-menu");
      await maker.press("stop-clear");
      expect(await maker.text("stop")).toBe("");
    });

    it("sounds a quiet tone when glue is dry, once, and only where she wants it", async () => {
      await maker.page.evaluateOnNewDocument(standInSound);
      await maker.open(MOON);
      const tones = () => maker.page.evaluate(() => (window as unknown as { tones: number }).tones);
      const dry = async () => {
        await maker.goToStep("Glue the base frame and let it dry");
        await maker.press("go");
        await wait(1000);
        await wait(12 * 60 * MINUTE);
        await wait(MINUTE);
        return tones();
      };
      expect(await dry()).toBe(0);
      await maker.press("open-menu");
      await maker.press("tone");
      // It is heard once as it is switched on: two notes.
      expect(await tones()).toBe(2);
      await maker.press("back");
      await maker.press("done");
      expect(await dry()).toBe(4);
    });

    it("tells the time that remains: by the kit's rates at first, by her own pace from five leaves on", async () => {
      const { leaves } = fixturePattern("little-gull");
      // The kit's rates in seconds: leaf 12, mark 4, cut 6, fold 10, checkpoint 20, tack 15; lines are pressed.
      const seconds = leaves.map(
        (leaf) =>
          12 +
          10 * leaf.cuts.length +
          10 * leaf.spans.length +
          (leaf.patternPage !== null && ((leaf.patternPage + 1) / 2) % 10 === 0 ? 20 : 0),
      );
      const written = (ms: number): string => {
        const minutes = Math.round(Math.round(ms / MINUTE) / 5) * 5;
        return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, "0")} min left`;
      };
      const quarters = (ms: number): string => {
        const count = Math.round(ms / MINUTE / 15);
        return `${Math.floor(count / 4)} h${count % 4 === 0 ? "" : ` ${(count % 4) * 15} min`}`;
      };
      const tacks = 15 * tackList(fixturePattern("little-gull")).glued.length;
      const left = (done: number): number => 1000 * seconds.slice(done).reduce((sum, one) => sum + one, tacks);
      await maker.open(GULL);
      // A first piece takes 1.75 times as long.
      expect(await maker.text("time")).toBe(
        `0 min worked · estimated ${quarters(left(0))} left, ${quarters(1.75 * left(0))} for a first piece`,
      );
      await maker.press("next");
      await maker.press("back");
      // Border leaves are estimated at 22 s; she takes 33 s for each.
      expect(seconds[0]).toBe(22);
      for (let i = 0; i < 5; i += 1) {
        await wait(33_000);
        await maker.press("go");
      }
      expect(await maker.text("time")).toBe(`3 min worked · about ${written(left(5) * 1.5)}`);
    });

    it("counts on by itself while she works, a pause only up to four minutes, and goes on after a reload", async () => {
      await maker.open(GULL);
      await maker.press("go");
      const worked = async () => (await maker.text("time")).split(" worked")[0];
      expect(await worked()).toBe("0 min");
      await wait(2 * MINUTE);
      expect(await worked()).toBe("2 min");
      await wait(60 * MINUTE);
      expect(await worked()).toBe("4 min");
      await maker.press("go");
      await maker.open(GULL);
      expect(await worked()).toBe("4 min");
    });
  });
}

/** Counts notes in the place of the browser's sound. Runs in the page. */
function standInSound(): void {
  const sounds = Object.assign(window, { tones: 0 });
  const volume = { setValueAtTime: () => {}, linearRampToValueAtTime: () => {} };
  class Sound {
    currentTime = 0;
    destination = {};
    createGain = () => ({ gain: volume, connect: () => {} });
    createOscillator = () => {
      sounds.tones += 1;
      const to = { connect: () => {} };
      return { frequency: {}, connect: () => to, start: () => {}, stop: () => {}, addEventListener: () => {} };
    };
  }
  Object.defineProperty(window, "AudioContext", { value: Sound });
}

/** Holds the clock and lets the test say how late it is, and when the page looks at the clock by itself. Runs in the page. */
function holdTime(): void {
  const opened = Date.now();
  const held = Object.assign(window, { late: 0, everySoOften: [] as (() => void)[] });
  Date.now = () => opened + held.late;
  const every = window.setInterval.bind(window);
  window.setInterval = ((run: () => void, ms: number) => {
    held.everySoOften.push(run);
    return every(run, ms);
  }) as typeof window.setInterval;
}
