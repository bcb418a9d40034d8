import { describe, expect, it } from "vitest";
import { type Graduation, graduations, linesAt } from "../../../src/core/units/graduations.ts";

const INCH = 25.4;
const written = (lines: readonly Graduation[]) => lines.map(({ at, rank }) => [Number(at.toFixed(3)), rank]);

describe("graduations(units, step, from, to)", () => {
  // By hand, as rulers have them: tens longest, then fives, then each millimetre, then halves (common practice, no source).
  it("are the lines of a ruler in millimetres", () => {
    expect(written(graduations("mm", 1, 8.6, 12))).toEqual([
      [9, 2],
      [10, 0],
      [11, 2],
      [12, 2],
    ]);
    expect(written(graduations("mm", 0.5, 4.4, 5.6))).toEqual([
      [4.5, 3],
      [5, 1],
      [5.5, 3],
    ]);
  });

  it("are the lines of a ruler in inches", () => {
    expect(written(graduations("in", INCH / 8, INCH, 1.5 * INCH))).toEqual([
      [25.4, 0],
      [28.575, 3],
      [31.75, 2],
      [34.925, 3],
      [38.1, 1],
    ]);
    const ranks = (step: number) => graduations("in", step, 0, step).map(({ rank }) => rank);
    expect([ranks(INCH / 16), ranks(INCH / 32)]).toEqual([
      [0, 4],
      [0, 5],
    ]);
  });

  it("begin at the ruler's end", () => {
    expect(written(graduations("mm", 1, -3, 1.2))).toEqual([
      [0, 0],
      [1, 2],
    ]);
    expect(graduations("mm", 1, 3.2, 3.8)).toEqual([]);
  });
});

describe("linesAt(at, step)", () => {
  it("is the line itself, or those on both sides", () => {
    expect(linesAt(40, 1)).toEqual({ below: 40, above: 40 });
    expect(linesAt(56.5, 1)).toEqual({ below: 56, above: 57 });
    expect(linesAt(56.5, 0.5)).toEqual({ below: 56.5, above: 56.5 });
    // 2 7/32 in lies between 2 3/16 and 2 1/4, and between 2 1/8 and 2 1/4.
    const at = (2 + 7 / 32) * INCH;
    expect(linesAt(at, INCH / 32)).toEqual({ below: at, above: at });
    expect(linesAt(at, INCH / 16)).toEqual({ below: 55.5625, above: 57.15 });
    expect(linesAt(at, INCH / 8)).toEqual({ below: 53.975, above: 57.15 });
  });
});
