import { describe, expect, it } from "vitest";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { scheduleOf, tasksOf } from "../../../src/core/class/schedule.ts";
import { readFixtureClass } from "./made-class.ts";

const plan = readFixtureClass();
const { fitting } = fitSeats(plan.seats, plan.kits);
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const schedule = (changes: Partial<KitClass>) => scheduleOf({ ...plan, ...changes }, fitting);
const sessions = (...minutes: readonly number[]): KitClass["sessions"] =>
  minutes.map((one) => ({ title: "", date: undefined, starts: undefined, minutes: one, aside: 0 }));

describe("tasksOf(plan, fit)", () => {
  it("is the kit's own time estimate, piece by piece, at the seat's pace", () => {
    for (const fit of fitting) {
      const tasks = tasksOf({ ready: [], fittingShare: 0.5 }, fit);
      expect(sum(tasks.map((task) => task.minutes))).toBeCloseTo(fit.effort.minutes * fit.seat.pace, 6);
      const leaves = tasks.flatMap((task) => task.leaf?.leaf ?? []);
      expect(leaves).toEqual(fit.pattern.leaves.map((leaf) => leaf.leaf));
    }
  });

  // Source: the rates' own words: what is ready takes no time, a part that is cut out takes the fitting share of its own.
  it("leaves out what the teacher has ready", () => {
    const fit = fitting.find(({ pattern }) => pattern.window)!;
    const tasks = tasksOf({ ready: ["scores", "parts"], fittingShare: 0.25 }, fit);
    const { score, part } = fit.effort.byStage;
    expect(sum(tasks.map((task) => task.minutes))).toBeCloseTo(
      (fit.effort.minutes - score - 0.75 * part) * fit.seat.pace,
      6,
    );
  });
});

describe("scheduleOf(plan, seats)", () => {
  /*
   * By hand for seat 1: its 96 leaves, all lines pressed first. With the rates of the kit (seconds: leaf 12, score 6, mark 4,
   * cut 6, fold 10, check 20, tack 15) the published pattern is walked until the session's minutes are spent.
   */
  it("tells the leaf that a session ends at", () => {
    const fit = fitting.find(({ seat }) => seat.number === 1)!;
    const minutes = 60;
    let seconds = minutes * 60 - fit.counts.scores * 6 * fit.seat.pace;
    let reached: number | undefined;
    for (const leaf of fit.pattern.leaves) {
      const folds =
        new Set(leaf.spans.map((span) => span.level)).size > 1 && fit.kit.fit.foldStyle === "stepped"
          ? 1 + leaf.spans.filter((span) => span.level > 1).length
          : leaf.spans.length;
      const isCheck = leaf.patternPage !== null && ((leaf.patternPage + 1) / 2) % 10 === 0;
      const tacks = leaf.tacks.filter((tack) => tack.to - tack.from >= fit.kit.fit.leastTab - 1e-6).length;
      seconds -= fit.seat.pace * (12 + 10 * leaf.cuts.length + 10 * folds + (isCheck ? 20 : 0) + 15 * tacks);
      if (seconds < -1e-6) break;
      reached = leaf.leaf;
    }
    const [one] = scheduleOf({ ...plan, ready: [], sessions: sessions(minutes) }, [fit]);
    expect(reached).toBeGreaterThan(fit.pattern.leaves[0]!.leaf);
    expect(one!.reaches[0]!.leaf!.leaf).toBe(reached);
  });

  it("goes on where the session before ended, and one long session reaches as far as its parts", () => {
    const parts = schedule({ sessions: sessions(70, 50, 90) });
    const whole = schedule({ sessions: sessions(210) });
    for (const [i, { reaches }] of parts.entries()) {
      expect(reaches.map((reach) => reach.leaves)).toEqual(
        reaches.map((reach) => reach.leaves).toSorted((a, b) => a - b),
      );
      expect(reaches.at(-1)).toEqual(whole[i]!.reaches[0]);
    }
  });

  it("says who does not finish, by how much, and what would save it", () => {
    const [seat2] = schedule({}).filter(({ fit }) => fit.seat.number === 2);
    const work = sum(plan.sessions.map((session) => session.minutes - session.aside));
    expect(seat2!.short).toBeCloseTo(seat2!.minutes - work, 6);
    expect(seat2!.reaches.at(-1)!.at).not.toBe("finished");
    const ready = scheduleOf({ ...plan, ready: ["scores", "parts"] }, [seat2!.fit]);
    expect(ready[0]!.minutes).toBeCloseTo(seat2!.minutes - seat2!.saves.scores, 6);
    for (const { short, reaches } of schedule({})) expect(short > 0).toBe(reaches.at(-1)!.at !== "finished");
  });

  it("offers only kits that fit the book and are finished in time", () => {
    for (const { fit, shorterKits } of schedule({})) {
      for (const kit of shorterKits) {
        const seat = { ...fit.seat, kit, refit: fit.seat.book };
        const other = fitSeats([seat], plan.kits).fitting;
        expect(scheduleOf(plan, other)[0]!.short).toBe(0);
      }
    }
    expect(schedule({}).some(({ shorterKits }) => shorterKits.length > 0)).toBe(true);
  });

  it("takes twice as long at half the pace", () => {
    const slow = fitting.map((fit) => ({ ...fit, seat: { ...fit.seat, pace: 2 * fit.seat.pace } }));
    const minutes = schedule({}).map((one) => one.minutes);
    expect(scheduleOf(plan, slow).map((one) => one.minutes)).toEqual(minutes.map((one) => expect.closeTo(2 * one, 6)));
  });
});
