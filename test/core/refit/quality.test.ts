import { describe, expect, it } from "vitest";
import type { Doubt } from "../../../src/core/findings/doubt.ts";
import { keepsFree, leastMargins, marginsOf } from "../../../src/core/refit/margins.ts";
import { judgeFit } from "../../../src/core/refit/quality.ts";
import { type KitChanges, madeKit } from "../kit/made-kit.ts";
import { patternOf } from "../pattern/computed.ts";

/** The made kit's leaf is 120 mm high, its picture 40 mm from 30 mm on. */
const FREE = { head: 8, tail: 8 };

describe("leastMargins(kit), marginsOf(fit, leafHeight), keepsFree(margins, least)", () => {
  // By hand: an author's picture that begins 3 mm from the head, or ends at the tail, may do so in any book.
  it.each<[string, KitChanges, object]>([
    ["8 mm each", {}, FREE],
    ["what its author keeps at the head", { fit: { head: 3 } }, { head: 3, tail: 8 }],
    ["what its author keeps at the tail", { book: { leafHeight: 70 } }, { head: 8, tail: 0 }],
    ["8 mm each where it does not fit its own book", { book: { leafHeight: 60 } }, FREE],
  ])("a kit keeps %s", (_, changes, least) => {
    expect(leastMargins(madeKit(changes))).toEqual(least);
  });

  it("are what is left above and below the picture", () => {
    expect(marginsOf({ head: 30, height: 40 }, 120)).toEqual({ head: 30, tail: 50 });
    expect(keepsFree({ head: 8, tail: 8 }, FREE)).toBe(true);
    expect(keepsFree({ head: 7.9, tail: 50 }, FREE)).toBe(false);
    expect(keepsFree({ head: 50, tail: 7.9 }, FREE)).toBe(false);
  });
});

describe("judgeFit(result, least)", () => {
  const judged = (findings: readonly Doubt[], changes: KitChanges = {}) =>
    judgeFit({ pattern: patternOf(madeKit(changes)), findings }, FREE);
  const springs = (resting: number): Doubt => ({ kind: "springs-open", opening: 1, resting });
  const shape = (stretch: number): Doubt => ({ kind: "out-of-shape", stretch });
  const merged: Doubt = { kind: "merged-spans", spans: 3, leaves: 2, leastTab: 3 };
  const caliper: Doubt = { kind: "caliper", caliper: 0.03, least: 0.04, most: 0.3, leaves: 200 };
  const hole: Doubt = { kind: "light-wider-than-hole", diameter: 38, width: 30, height: 30 };
  const floor: Doubt = { kind: "narrow-floor", level: 3, width: 30, need: 40 };
  const coarse: Doubt = { kind: "coarse", leaves: 20, column: 4 };

  // By definition: poor is what no care at the table makes good. Half a turn is flat.
  it.each<[string, readonly Doubt[], string, readonly Doubt[]]>([
    ["fits without doubts", [], "fits", []],
    ["fits where only the picture looks a little different", [merged], "fits", []],
    ["is to be looked at where the book may have been measured wrong", [merged, caliper], "check", [caliper]],
    ["is to be looked at where flaps push it open, but not beyond flat", [springs(3.1)], "check", [springs(3.1)]],
    ["is poor where they push it beyond flat", [springs(3.2)], "poor", [springs(3.2)]],
    ["is to be looked at where the picture is a little wide", [shape(1.04)], "check", [shape(1.04)]],
    ["is poor where it is much narrower than drawn", [shape(0.94)], "poor", [shape(0.94)]],
    ["is poor in coarse steps, whatever else there is", [caliper, coarse], "poor", [caliper, coarse]],
    ["is poor where the light does not go through the hole", [hole], "poor", [hole]],
    ["is to be looked at where the light stands narrow", [floor], "check", [floor]],
  ])("%s", (_, findings, kind, reasons) => {
    expect(judged(findings)).toEqual({ kind, reasons });
  });

  it("is to be looked at where less paper stays free than the kit keeps", () => {
    expect(judged([], { fit: { head: 5 } })).toEqual({
      kind: "check",
      reasons: [{ kind: "narrow-margins", head: 5, tail: 75 }],
    });
  });
});
