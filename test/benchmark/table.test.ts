import { describe, expect, it } from "vitest";
import { type Figure, shareOf } from "./figure.ts";
import { LINES } from "./lines.ts";
import { isHeld, isWorse, tableOf } from "./table.ts";

const times = (value: number): Figure => ({ line: "pattern-pass", value });
const faster = (value: number): Figure => ({ line: "packets-one", value });
const time = (value: number, yardstick: number): Figure => ({ line: "dots", value, yardstick });

describe("isHeld(figure)", () => {
  it("holds at the goal itself, where less is better and where more is", () => {
    expect([times(15), times(15.1)].map(isHeld)).toEqual([true, false]);
    expect([faster(1), faster(0.9)].map(isHeld)).toEqual([true, false]);
  });

  it("never holds for what did not end", () => {
    expect(isHeld(times(Number.POSITIVE_INFINITY))).toBe(false);
  });
});

describe("isWorse(now, kept)", () => {
  it("lets a third pass, and no more", () => {
    expect(isWorse(times(13.2), times(10))).toBe(false);
    expect(isWorse(times(13.5), times(10))).toBe(true);
    expect(isWorse(faster(0.68), faster(1))).toBe(false);
    expect(isWorse(faster(0.65), faster(1))).toBe(true);
  });

  it("compares times by their yardsticks: a machine half as fast takes twice as long for both", () => {
    expect(shareOf(time(20, 2))).toBe(10);
    // A second is a thousand milliseconds.
    expect(shareOf({ line: "serve-4", value: 3, yardstick: 2 })).toBe(1500);
    expect(isWorse(time(20, 2), time(10, 1))).toBe(false);
    expect(isWorse(time(20, 1), time(10, 1))).toBe(true);
  });

  it("finds what no longer ends worse, and nothing worse than what never did", () => {
    expect(isWorse(times(Number.POSITIVE_INFINITY), times(10))).toBe(true);
    expect(isWorse(times(Number.POSITIVE_INFINITY), times(Number.POSITIVE_INFINITY))).toBe(false);
  });
});

describe("tableOf(figures)", () => {
  it("says goal, figure, turns and whether it is held, in the table's order", () => {
    const rows = tableOf([{ line: "kit-bytes", value: 2.744 }, time(12.4, 0.5), faster(1.5)]).split("\n");
    expect(rows.slice(2)).toEqual([
      `| ${LINES.dots.work} | at most 10 ms | 12.4 ms, or 24.8 turns: lost |`,
      `| ${LINES["packets-one"].work} | at least 1 times | 1.5 times: held |`,
      `| ${LINES["kit-bytes"].work} | at most 1 MB | 2.74 MB: lost |`,
    ]);
  });

  it("sets no space before a per cent sign", () => {
    expect(tableOf([{ line: "build-100-none", value: 7.5 }])).toContain("| at most 5% | 7.5%: lost |");
  });

  it("says what did not end", () => {
    expect(tableOf([{ line: "build-1000", value: Number.POSITIVE_INFINITY }])).toContain("| did not end: lost |");
  });
});
