import { describe, expect, it } from "vitest";
import type { Stretch } from "../../../src/core/class/running-order.ts";
import { countdownText } from "../../../src/page/room/countdown.ts";
import { momentOf, nextTarget, statedBeginning } from "../../../src/page/room/session-clock.ts";

/** Two hours from 18:30: by hand, settling until 18:40, work until 19:20, pause until 19:35, work until 20:20, tidying until 20:30. */
const ORDER: readonly Stretch[] = [
  { kind: "settle", from: 0, until: 10 },
  { kind: "work", from: 10, until: 50 },
  { kind: "pause", from: 50, until: 65 },
  { kind: "work", from: 65, until: 110 },
  { kind: "tidy", from: 110, until: 120 },
];
const at = (time: string): number => Date.parse(`2027-01-14T${time}`);
const BEGUN = at("18:30");

describe("a session by the clock", () => {
  it("begins on its day at its time, where both are stated", () => {
    expect(statedBeginning("2027-01-14", "18:30")).toBe(BEGUN);
    expect(statedBeginning(undefined, "18:30")).toBeUndefined();
    expect(statedBeginning("2027-01-14", undefined)).toBeUndefined();
  });

  it.each([
    ["18:29:59", { at: "before", begins: BEGUN }, "pause"],
    ["18:30", { at: "stretch", index: 0, until: at("18:40") }, "pause"],
    ["19:19:59", { at: "stretch", index: 1, until: at("19:20") }, "pause"],
    ["19:20", { at: "stretch", index: 2, until: at("19:35") }, "end"],
    ["20:19", { at: "stretch", index: 3, until: at("20:20") }, "end"],
    ["20:29", { at: "stretch", index: 4, until: at("20:30") }, "end"],
    ["20:30", { at: "after" }, "end"],
  ] as const)("stands at %s where the clock says", (time, moment, target) => {
    const found = momentOf(ORDER, BEGUN, at(time));
    expect(found).toEqual(moment);
    expect(nextTarget(ORDER, found)).toBe(target);
  });

  it("has the targets of its end alone where there is no pause, and before it begins those of its pause", () => {
    expect(nextTarget([ORDER[1]!], undefined)).toBe("end");
    expect(nextTarget(ORDER, undefined)).toBe("pause");
  });
});

describe("countdownText(seconds)", () => {
  it.each([
    [0, "0:00"],
    [5, "0:05"],
    [545, "9:05"],
    [4145, "1:09:05"],
  ])("%d s is %s", (seconds, text) => {
    expect(countdownText(seconds)).toBe(text);
  });
});
