import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { scheduleOf, workMinutes } from "../../../src/core/class/schedule.ts";
import { tasksOf } from "../../../src/core/class/tasks.ts";
import type { Rates } from "../../../src/core/kit/kit.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madeLeaf, madePattern } from "../plan/made-pattern.ts";
import { madeClass, madeSeat, session } from "./made-seats.ts";

/** A minute a leaf, and nothing else at the leaves. */
const MINUTE: Rates = { leaf: 60, score: 0, mark: 0, cut: 0, fold: 0, check: 0, tack: 0, notch: 0, part: 0, first: 2 };

/** Four leaves of a minute each, 10 minutes of score lines, 20 of the window: 34 minutes. */
const FIT = madeSeat(1, {
  kit: madeKit({ rates: MINUTE }),
  pattern: madePattern({
    leaves: [madeLeaf(4, null, [2]), madeLeaf(5, 1, [1]), madeLeaf(6, 3, [1]), madeLeaf(7, null, [2])],
  }),
  byStage: { score: 10, part: 20 },
});
const slow = (fit: typeof FIT, pace: number): typeof FIT => ({ ...fit, seat: { ...fit.seat, pace } });

function schedule(plan: Partial<KitClass>, fit = FIT) {
  const [one, ...others] = scheduleOf(madeClass(plan), [fit]);
  expect(others).toEqual([]);
  return one!;
}

const minutesOf = (plan: Partial<KitClass>, fit = FIT) =>
  tasksOf(madeClass(plan), fit).map(({ kind, leaf, minutes }) => [kind, leaf?.leaf, minutes]);

describe("tasksOf(plan, fit)", () => {
  it("is the score lines, each leaf, then the window", () => {
    expect(minutesOf({})).toEqual([
      ["scores", undefined, 10],
      ["leaf", 4, 1],
      ["leaf", 5, 1],
      ["leaf", 6, 1],
      ["leaf", 7, 1],
      ["parts", undefined, 20],
    ]);
  });

  // A window whose parts are cut out takes the share of its time that fitting takes: a quarter of 20 minutes.
  it.each<[string, KitClass["ready"], typeof FIT, number[]]>([
    ["nothing that takes no time", [], madeSeat(1, { kit: madeKit({ rates: { ...MINUTE, leaf: 0 } }) }), []],
    ["no score lines that are ready", ["scores"], FIT, [1, 1, 1, 1, 20]],
    ["the fitting alone of parts that are ready", ["parts"], FIT, [10, 1, 1, 1, 1, 5]],
    ["both", ["scores", "parts"], FIT, [1, 1, 1, 1, 5]],
    ["each at the seat's pace", ["parts"], slow(FIT, 1.5), [15, 1.5, 1.5, 1.5, 1.5, 7.5]],
  ])("has %s", (_, ready, fit, minutes) => {
    expect(tasksOf(madeClass({ ready }), fit).map((task) => task.minutes)).toEqual(minutes);
  });
});

describe("workMinutes(plan)", () => {
  it("leaves out what is no work at the book", () => {
    expect(workMinutes({ sessions: [session(120, 25), session(90)] })).toEqual([95, 90]);
  });
});

describe("scheduleOf(plan, seats)", () => {
  // By hand: what is begun in a session and not ended in it is gone on with in the next.
  it("tells where each session ends, the time aside left out", () => {
    const { reaches, minutes, short } = schedule({
      sessions: [session(12, 2.5), session(3), session(2), session(19.5)],
    });
    expect(minutes).toBe(34);
    expect(short).toBe(0);
    expect(reaches.map(({ leaf, leaves, at, share }) => [leaf?.leaf, leaves, at, share])).toEqual([
      [undefined, 0, "scores", expect.closeTo(9.5 / 34, 12)],
      [5, 2, "leaf", expect.closeTo(12.5 / 34, 12)],
      [7, 4, "parts", expect.closeTo(14.5 / 34, 12)],
      [7, 4, "finished", 1],
    ]);
  });

  it.each([
    ["counts what ends with the session", 12, 5, 2],
    ["does not count what ends just after it", 11.99, 4, 1],
    ["counts what ends with it but for binary dust", 12 - 1e-10, 5, 2],
  ])("%s", (_, minutes, leaf, leaves) => {
    const [reach] = schedule({ sessions: [session(minutes)] }).reaches;
    expect([reach!.leaf?.leaf, reach!.leaves]).toEqual([leafNumber(leaf), leaves]);
  });

  it.each([
    [34, 0],
    [33, 1],
    [10, 24],
    [50, 0],
  ])("with %d minutes of work is short by %d", (minutes, short) => {
    const whole = schedule({ sessions: [session(minutes + 5, 5)] });
    expect(whole.short).toBe(short);
    expect(whole.reaches[0]!.at === "finished").toBe(short === 0);
    expect(whole.reaches[0]!.share).toBe(Math.min(1, minutes / 34));
  });

  // By hand: three quarters of 20 minutes are saved by parts that are cut out beforehand; what is ready saves nothing more.
  it.each<[KitClass["ready"], number, number, number, number]>([
    [[], 1, 34, 10, 15],
    [["scores"], 1, 24, 0, 15],
    [["parts"], 1, 19, 10, 0],
    [["scores", "parts"], 1, 9, 0, 0],
    [[], 1.5, 51, 15, 22.5],
    [["scores"], 2, 48, 0, 30],
  ])("with %j ready and pace %d takes %d minutes, and could save %d and %d", (ready, pace, minutes, scores, parts) => {
    const one = schedule({ ready, sessions: [session(6)] }, slow(FIT, pace));
    expect(one.minutes).toBe(minutes);
    expect(one.saves).toEqual({ scores, parts });
    expect(one.reaches[0]!.share).toBeCloseTo(6 / minutes, 12);
  });

  // By hand: 4 of 12 minutes are aside, so the pause is after 4 minutes of work and lasts 2; the buffer is no work.
  it("tells where each session's pause is, and plans nothing into the buffer", () => {
    const { pauses, reaches, short } = schedule({
      sessions: [session(12, 4), session(40, 4, { buffer: 11 }), session(9)],
    });
    expect(pauses.map((pause) => pause && [pause.leaves, pause.at])).toEqual([[0, "scores"], [4, "parts"], undefined]);
    expect(reaches.map(({ leaves, at }) => [leaves, at])).toEqual([
      [0, "scores"],
      [4, "parts"],
      [4, "finished"],
    ]);
    expect(short).toBe(0);
  });

  // By hand: one awl; the second seat waits 10 minutes for it, so its 34 minutes of work take 44.
  it("counts the minutes in which a seat waits for its turn", () => {
    const [first, second] = scheduleOf(madeClass({ sessions: [session(34)], tools: { awl: 1 } }), [
      FIT,
      madeSeat(2, { ...FIT, pace: 1, byStage: FIT.effort.byStage }),
    ]);
    expect([first!.minutes, first!.waits, first!.short]).toEqual([34, 0, 0]);
    expect([second!.minutes, second!.waits, second!.short]).toEqual([34, 10, 10]);
    expect([first!.windowAt, second!.windowAt]).toEqual([14, 24]);
    expect(second!.reaches[0]).toMatchObject({ leaves: 4, at: "parts", share: 34 / 44 });
  });

  it("goes through every seat by itself", () => {
    const plan = madeClass({ sessions: [session(40)] });
    const all = scheduleOf(plan, [FIT, slow(madeSeat(2, { byStage: { score: 30 } }), 2)]);
    expect(all.map(({ fit, short }) => [fit.seat.number, short > 0])).toEqual([
      [1, false],
      [2, true],
    ]);
  });
});

describe("shorter kits of scheduleOf(plan, seats)", () => {
  // The made kit folds all of its 40 leaves: so many minutes at a minute a leaf.
  const own = FIT.seat.kit;
  const short = madeKit({ slug: "short", rates: MINUTE });
  const wide = madeKit({ slug: "wide", rates: MINUTE, book: { leafWidth: 20 } });
  const long = madeKit({ slug: "long", rates: { ...MINUTE, leaf: 61 } });
  const names = (minutes: number, fit = madeSeat(1, { ...FIT, byStage: { score: 50 } })) =>
    schedule({ kits: [own, long, wide, short], sessions: [session(minutes)] }, fit).shorterKits.map(({ slug }) => slug);

  it("are those that the book carries and that are finished in time", () => {
    expect(names(40)).toEqual(["short"]);
    expect(names(41)).toEqual(["long", "short"]);
    expect(names(39.9)).toEqual([]);
    // By hand: 50 minutes of score lines and 4 leaves are short by half a minute.
    expect(names(53.5)).toEqual(["long", "short"]);
    expect(names(54)).toEqual([]);
  });

  it("are counted at the seat's pace", () => {
    expect(names(40, slow(madeSeat(1, { kit: own, byStage: { score: 50 } }), 1.1))).toEqual([]);
  });

  it("are none where the seat's own kit is finished, and never that one", () => {
    expect(names(41, FIT)).toEqual([]);
    expect(
      schedule({ kits: [own], sessions: [session(40)] }, madeSeat(1, { kit: own, byStage: { score: 50 } })).shorterKits,
    ).toEqual([]);
  });
});
