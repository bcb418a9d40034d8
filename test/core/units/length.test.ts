import { describe, expect, it } from "vitest";
import { toDegrees, toRadians } from "../../../src/core/units/angle.ts";
import {
  inchDenominator,
  LengthError,
  type LengthFault,
  type LengthStyle,
  MM_PER_INCH,
  parseLength,
  roundTo,
  stepFor,
  tidy,
  toDecimals,
} from "../../../src/core/units/length.ts";
import {
  formatDepth,
  formatLength,
  formatNumber,
  formatOnRuler,
  formatSize,
  sayLength,
} from "../../../src/words/lengths.ts";
import { fc } from "../../seed.ts";

const SIXTEENTH = 25.4 / 16;
const THIRTY_SECOND = 25.4 / 32;

// The international inch is 25.4 mm exactly (1959).
describe("parseLength(value)", () => {
  it.each<[unknown, number]>([
    [12, 12],
    [0, 0],
    [-3.5, -3.5],
    ["12 mm", 12],
    ["12mm", 12],
    ["  12   mm ", 12],
    ["12 MM", 12],
    [".5 mm", 0.5],
    ["0.5 cm", 5],
    ["1.2 cm", 12],
    ["1 in", 25.4],
    ["1 In", 25.4],
    ["0.5 in", 12.7],
    ['2"', 50.8],
    ["2″", 50.8],
    ["1/2 in", 12.7],
    ["1 1/2 in", 38.1],
    ["1 1/2in", 38.1],
    ['5 1/4"', 133.35],
    ["1 3/8 in", 34.925],
    ["1/32 in", 0.79375],
    ["3 / 4 in", 19.05],
    ["½ in", 12.7],
    ["1½ in", 38.1],
    ["1 ½ in", 38.1],
    ["1⅜″", 34.925],
    ["¼ in", 6.35],
    ["¾ in", 19.05],
    ["⅛ in", 3.175],
    ["⅝ in", 15.875],
    ["⅞ in", 22.225],
    ["-2 mm", -2],
    ["-1 1/2 in", -38.1],
    ["1/3 cm", 10 / 3],
  ])("reads %j as %d mm", (value, mm) => {
    expect(parseLength(value)).toBeCloseTo(mm, 10);
  });

  it.each<[unknown, LengthFault]>([
    ["12", { kind: "no-unit" }],
    ["1 1/2", { kind: "no-unit" }],
    ["½", { kind: "no-unit" }],
    ["12 pt", { kind: "other-unit", unit: "pt" }],
    ["12 inches", { kind: "other-unit", unit: "inches" }],
    ["1 m", { kind: "other-unit", unit: "m" }],
    ["1/0 in", { kind: "zero-divisor" }],
    ["2 1/0 in", { kind: "zero-divisor" }],
    ["", { kind: "no-length" }],
    ["mm", { kind: "no-length" }],
    ["tall", { kind: "no-length" }],
    ["1 2 mm", { kind: "no-length" }],
    ["1 0.5 in", { kind: "no-length" }],
    ["1.5.2 mm", { kind: "no-length" }],
    ["1,5 mm", { kind: "comma" }],
    ["1/2/3 in", { kind: "no-length" }],
    ["1e3 mm", { kind: "other-unit", unit: "e3 mm" }],
    ["--1 mm", { kind: "no-length" }],
    [Number.NaN, { kind: "not-finite" }],
    [Number.POSITIVE_INFINITY, { kind: "not-finite" }],
    [null, { kind: "no-length" }],
    [undefined, { kind: "no-length" }],
    [true, { kind: "no-length" }],
    [[12], { kind: "no-length" }],
    [{ mm: 12 }, { kind: "no-length" }],
  ])("refuses %j: %j", (value, fault) => {
    expect(() => parseLength(value)).toThrow(LengthError);
    expect(() => parseLength(value)).toThrow(expect.objectContaining({ fault }));
  });

  it("tells what was given", () => {
    const given = (value: unknown): string => {
      try {
        return String(parseLength(value));
      } catch (error) {
        return (error as LengthError).given;
      }
    };
    expect(["12 pt", Number.NaN, null, [12], undefined].map(given)).toEqual([
      "12 pt",
      "NaN",
      "null",
      "[12]",
      "undefined",
    ]);
  });

  it("has 25.4 mm in an inch, without binary dust", () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(parseLength("10 in")).toBe(254);
    expect(parseLength("1 in")).toBe(25.4);
  });
});

describe("formatNumber(mm, style)", () => {
  it.each<[number, LengthStyle, string]>([
    [46.5, { units: "mm", step: 0.5 }, "46.5"],
    [46, { units: "mm", step: 0.5 }, "46.0"],
    [46.74, { units: "mm", step: 0.5 }, "46.5"],
    [46.75, { units: "mm", step: 0.5 }, "47.0"],
    [46.5, { units: "mm", step: 1 }, "47"],
    [0.2, { units: "mm", step: 0.5 }, "0.0"],
    [-0.2, { units: "mm", step: 0.5 }, "0.0"],
    [12.25, { units: "mm", step: 0.25 }, "12.25"],
    [0, { units: "in", step: THIRTY_SECOND }, "0"],
    [25.4, { units: "in", step: THIRTY_SECOND }, "1"],
    [12.7, { units: "in", step: THIRTY_SECOND }, "1/2"],
    [46.0375, { units: "in", step: THIRTY_SECOND }, "1 13/16"],
    [46.83125, { units: "in", step: THIRTY_SECOND }, "1 27/32"],
    [46.83125, { units: "in", step: SIXTEENTH }, "1 7/8"],
    [3.175, { units: "in", step: SIXTEENTH }, "1/8"],
    [25.2, { units: "in", step: THIRTY_SECOND }, "1"],
    [0.3, { units: "in", step: THIRTY_SECOND }, "0"],
    [-0.3, { units: "in", step: THIRTY_SECOND }, "0"],
    [-38.1, { units: "in", step: THIRTY_SECOND }, "−1 1/2"],
  ])("writes %d mm in %o as %s", (mm, style, text) => {
    expect(formatNumber(mm, style)).toBe(text);
  });

  it("writes every multiple of 1/32 and 1/16 in as a reduced fraction", () => {
    for (const denominator of [16, 32]) {
      const style: LengthStyle = { units: "in", step: 25.4 / denominator };
      for (let parts = 0; parts <= 3 * denominator; parts += 1) {
        const text = formatNumber((parts * 25.4) / denominator, style);
        const [, whole, over, under] = /^(?:(\d+)(?: (?=\d+\/)|$))?(?:(\d+)\/(\d+))?$/.exec(text)!;
        expect(Number(whole ?? 0) * denominator + (Number(over ?? 0) * denominator) / Number(under ?? 1)).toBe(parts);
        if (over === undefined) continue;
        expect(Number(over) % 2).toBe(1);
        expect([2, 4, 8, 16, 32].slice(0, Math.log2(denominator))).toContain(Number(under));
        expect(Number(over)).toBeLessThan(Number(under));
      }
    }
  });

  it("writes what parseLength reads back to within half a step", () => {
    const styles = fc.constantFrom<LengthStyle>(
      { units: "mm", step: 0.5 },
      { units: "mm", step: 1 },
      { units: "mm", step: 0.1 },
      { units: "in", step: SIXTEENTH },
      { units: "in", step: THIRTY_SECOND },
    );
    fc.assert(
      fc.property(fc.double({ min: 0, max: 700, noNaN: true }), styles, (mm, style) => {
        const text = formatLength(mm, style);
        expect(text.endsWith(`\u00a0${style.units}`)).toBe(true);
        expect(Math.abs(parseLength(text) - mm)).toBeLessThanOrEqual(style.step / 2 + 1e-6);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("formatDepth(mm, units) and formatSize(mm, units)", () => {
  it.each([
    [26, "26", "1 1/32"],
    [12.5, "12.5", "1/2"],
    [23.52, "23.5", "15/16"],
    [34.925, "34.9", "1 3/8"],
    [0, "0", "0"],
  ])("writes %d mm as %s or %s in", (mm, inMillimetres, inInches) => {
    expect(formatDepth(mm, "mm")).toBe(inMillimetres);
    expect(formatDepth(mm, "in")).toBe(inInches);
    expect(formatSize(mm, "mm")).toBe(`${inMillimetres}\u00a0mm`);
    expect(formatSize(mm, "in")).toBe(`${inInches}\u00a0in`);
  });
});

describe("formatOnRuler(mm, units)", () => {
  it.each([
    [138, "138", "5 7/16"],
    [34.925, "35", "1 3/8"],
    [19.05, "19", "3/4"],
    [12.5, "12.5", "1/2"],
    [23.3, "23.5", "29/32"],
  ])("writes %d mm as %s or %s in", (mm, inMillimetres, inInches) => {
    expect(formatOnRuler(mm, "mm")).toBe(`${inMillimetres}\u00a0mm`);
    expect(formatOnRuler(mm, "in")).toBe(`${inInches}\u00a0in`);
  });
});

describe("roundTo(value, step) and tidy(value)", () => {
  it.each([
    [46.25, 0.5, 46.5],
    [0.25, 0.5, 0.5],
    [46.2499, 0.5, 46],
    [0.3 - 0.05, 0.1, 0.3],
    [1.15, 0.1, 1.2],
    [3.2, 25.4 / 32, 3.175],
    [-0.1, 0.5, 0],
  ])("rounds %d in steps of %d to %d", (value, step, rounded) => {
    expect(roundTo(value, step)).toBe(rounded);
  });

  it("has no binary dust and no negative zero", () => {
    expect(tidy(0.1 + 0.2)).toBe(0.3);
    expect(Object.is(tidy(-1e-9), 0)).toBe(true);
    expect(tidy(1.23456789, 3)).toBe(1.235);
    expect(tidy(1.23456789)).toBe(1.23457);
    expect(tidy(-1.23456789, 0)).toBe(-1);
  });
});

describe("steps", () => {
  it.each([
    ["in", 0.5, THIRTY_SECOND],
    ["in", 1, SIXTEENTH],
    ["in", THIRTY_SECOND, THIRTY_SECOND],
    ["in", SIXTEENTH, SIXTEENTH],
    ["in", 25.4 / 8, 25.4 / 8],
    ["in", THIRTY_SECOND - 1e-9, THIRTY_SECOND - 1e-9],
    ["in", 0.89, THIRTY_SECOND],
    ["in", 0.9, SIXTEENTH],
    ["mm", 0.5, 0.5],
    ["mm", 0.8, 0.8],
    ["mm", 1, 1],
    ["mm", 25.4 / 8, 1],
    ["mm", THIRTY_SECOND, 0.5],
    ["mm", SIXTEENTH, 1],
  ] as const)("in %s the step of %d mm is %d mm", (units, step, same) => {
    expect(stepFor(units, step)).toBe(same);
  });

  it("has 1/16 for a step of 1/16 in and 1/32 otherwise", () => {
    expect([SIXTEENTH, THIRTY_SECOND, 0.5].map(inchDenominator)).toEqual([16, 32, 32]);
  });
});

describe("angles", () => {
  it.each([
    [0, 0],
    [60, Math.PI / 3],
    [180, Math.PI],
    [360, 2 * Math.PI],
  ])("%d° are %d radians", (degrees, radians) => {
    expect(toRadians(degrees)).toBeCloseTo(radians, 14);
    expect(toDegrees(radians)).toBeCloseTo(degrees, 12);
  });
});

describe("sayLength(mm, units, bound, decimals)", () => {
  it.each([
    [143.04, "mm", undefined, 1, "143 mm"],
    [18.25, "mm", undefined, 2, "18.25 mm"],
    [67.49, "mm", "floor", 1, "67.4 mm"],
    [67.41, "mm", "ceil", 1, "67.5 mm"],
    [67.4, "mm", "floor", 1, "67.4 mm"],
    [25.4, "in", "floor", 1, "1 in"],
    [25.9, "in", "floor", 1, "1 in"],
    [25.5, "in", "ceil", 1, "1 1/32 in"],
    [46.04, "in", undefined, 1, "1 13/16 in"],
  ] as const)("writes %f in %s, bound %s", (mm, units, bound, decimals, text) => {
    expect(sayLength(mm, units, bound, decimals)).toBe(text);
  });
});

// ECMAScript, Number.prototype.toFixed: the nearest decimal, of two equally near ones the greater, for negative numbers likewise.
describe("toDecimals(value, decimals)", () => {
  const byText = (value: number, decimals: number): number => Number(value.toFixed(decimals)) + 0;

  it.each([
    [1.005, 2, 1],
    [-1.005, 2, -1],
    [2.5, 0, 3],
    [-2.5, 0, -3],
    [1.45, 1, 1.4],
    [-0.001, 2, 0],
    [8.345, 2, 8.35],
    [0.125, 2, 0.13],
    [-0.125, 2, -0.13],
    [4e15, 2, 4e15],
  ])("of %f to %i is %f", (value, decimals, expected) => {
    expect(toDecimals(value, decimals)).toBe(expected);
    expect(byText(value, decimals)).toBe(expected);
  });

  it("is what a text with so many decimals says", () => {
    const decimals = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(fc.double({ min: -1e10, max: 1e10, noNaN: true }), decimals, (value, count) => {
        expect(toDecimals(value, count)).toBe(byText(value, count));
      }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: -1e7, max: 1e7 }),
        fc.integer({ min: -9, max: 9 }),
        decimals,
        (half, ulps, count) => {
          const near = ((2 * half + 1) / 2 / 10 ** count) * (1 + ulps * Number.EPSILON);
          expect(toDecimals(near, count)).toBe(byText(near, count));
        },
      ),
    );
  });
});
