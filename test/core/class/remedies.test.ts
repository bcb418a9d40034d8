import { describe, expect, it } from "vitest";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { remediesFor } from "../../../src/core/class/remedies.ts";
import { type SeatSchedule, scheduleOf } from "../../../src/core/class/schedule.ts";
import { readFixtureClass } from "./made-class.ts";

const plan = readFixtureClass();
const { fitting } = fitSeats(plan.seats, plan.kits);
const remediesOf = (changes: Partial<KitClass>) => {
  const changed = { ...plan, ...changes };
  return scheduleOf(changed, fitting).map((schedule) => ({ schedule, remedies: remediesFor(changed, schedule) }));
};
const session = (minutes: number) => ({ title: "", date: undefined, starts: undefined, minutes, aside: 0 });
const kinds = (one: { readonly remedies: ReturnType<typeof remediesFor> }) => one.remedies.map(({ kind }) => kind);

describe("remediesFor(plan, schedule)", () => {
  it("has nothing for a seat that finishes", () => {
    for (const { schedule, remedies } of remediesOf({})) expect(remedies.length > 0).toBe(schedule.short > 0);
  });

  it("begins with what is left for home, and ends with more sessions that are enough", () => {
    for (const { schedule, remedies } of remediesOf({ sessions: [session(90)] })) {
      if (schedule.short === 0) continue;
      const left = schedule.fit.pattern.leaves.length - schedule.reaches.at(-1)!.leaves;
      expect(remedies[0]).toMatchObject({ kind: "leaves-at-home", leaves: left, minutes: schedule.short });
      const last = remedies.at(-1)!;
      if (last.kind !== "more-sessions") throw new Error(last.kind);
      expect(90 * last.sessions).toBeGreaterThanOrEqual(schedule.short);
      expect(90 * (last.sessions - 1)).toBeLessThan(schedule.short);
    }
  });

  it("counts the score lines in where they are not done either, and only the window where all leaves are folded", () => {
    const seat2 = ({ schedule }: { readonly schedule: SeatSchedule }) => schedule.fit.seat.number === 2;
    const early = remediesOf({ sessions: [session(10)], ready: [] }).find(seat2)!;
    expect(early.remedies[0]).toMatchObject({ kind: "leaves-at-home", scores: true });
    const whole = remediesOf({ sessions: [session(1)], ready: [] }).find(seat2)!.schedule;
    const nearly = Math.floor(whole.minutes - 5);
    const late = remediesOf({ sessions: [session(nearly)], ready: [] }).find(seat2)!;
    expect(late.remedies[0]).toMatchObject({ kind: "window-at-home", minutes: late.schedule.short });
  });

  // Source: arithmetic on the schedule's own minutes.
  it("says what is still missing after what is done beforehand, and nothing where it is enough", () => {
    for (const { schedule, remedies } of remediesOf({ ready: [] })) {
      const { saves, short } = schedule;
      const missing = {
        "scores-before": saves.scores,
        "parts-before": saves.parts,
        "both-before": saves.scores + saves.parts,
      };
      for (const remedy of remedies)
        if ("missing" in remedy) expect(remedy.missing).toBeCloseTo(Math.max(0, short - missing[remedy.kind]), 9);
    }
  });

  it("offers beforehand only what is not ready, and both only where there are two", () => {
    const beforehand = ["scores-before", "parts-before", "both-before"];
    for (const one of remediesOf({ ready: ["scores", "parts"] }))
      expect(kinds(one).filter((kind) => beforehand.includes(kind))).toEqual([]);
    for (const one of remediesOf({ ready: ["parts"] })) expect(kinds(one)).not.toContain("both-before");
    const windowed = remediesOf({ ready: [] }).filter(({ schedule }) => schedule.short > 0 && schedule.saves.parts > 0);
    expect(windowed.length).toBeGreaterThan(0);
    for (const one of windowed) expect(kinds(one).filter((kind) => beforehand.includes(kind))).toEqual(beforehand);
  });

  it("names the shorter kits of the schedule", () => {
    for (const { schedule, remedies } of remediesOf({}))
      expect(remedies.flatMap((one) => (one.kind === "shorter-kit" ? [one.kit] : []))).toEqual(schedule.shorterKits);
  });
});
