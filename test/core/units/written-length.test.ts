import { describe, expect, it } from "vitest";
import { readLength } from "../../../src/core/units/written-length.ts";
import { readNumber } from "../../../src/core/units/written-number.ts";
import { fc } from "../../seed.ts";

/** Vulgar fractions that keyboards and phones offer, by their share of eighths (Unicode, Number Forms and Latin-1). */
const SIGNS: Readonly<Record<number, string>> = { 1: "⅛", 2: "¼", 3: "⅜", 4: "½", 5: "⅝", 6: "¾", 7: "⅞" };

/** Figures above and below a fraction's stroke (Unicode, Superscripts and Subscripts). */
const raised = (count: number): string => [...String(count)].map((one) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(one)]).join("");
const lowered = (count: number): string => [...String(count)].map((one) => "₀₁₂₃₄₅₆₇₈₉"[Number(one)]).join("");

const inchWords = fc.constantFrom("in", " in", '"', "”", "″", "''", "’’", "′′", " in.", " inch", " inches", " IN");

describe("readLength(text, units)", () => {
  // The inch is 25.4 mm exactly (1959); the sums are by hand.
  it.each([
    ["21,6 cm", 216],
    ["21.6cm", 216],
    ["216", 216],
    ["216\u00a0mm", 216],
    ["7 1/4 in", 184.15],
    ["7 1⁄4 in", 184.15],
    ["7¼ in", 184.15],
    ["7 ¼ in", 184.15],
    ["7-1/4 in", 184.15],
    ["7–1/4 in", 184.15],
    ["7 ¹⁄₄ in", 184.15],
    ["7¹⁄₄”", 184.15],
    ["7,25”", 184.15],
    ["7 1/4”", 184.15],
    ["7 1/4″", 184.15],
    ["7 1/4''", 184.15],
    ["¼”", 6.35],
    ["8 inches", 203.2],
  ])("reads %j", (text, mm) => {
    expect(readLength(text, "mm")).toBeCloseTo(mm, 9);
  });

  it.each([
    "",
    "high",
    "12 ft",
    "8,5,5",
    "1.000,5",
    "1-2",
    "-5",
    "1/0 in",
    "7 1/4/2",
    "7”5",
    "”",
    "7 1 4",
    "0x10",
    "1e3",
  ])("reads no length of a book in %j", (text) => {
    expect(readLength(text, "mm") ?? Number.NaN).not.toBeGreaterThan(0);
  });

  it("reads the same sixteenths however they are written", () => {
    fc.assert(
      fc.property(fc.nat(30), fc.integer({ min: 1, max: 15 }), inchWords, (whole, sixteenths, unit) => {
        const mm = ((16 * whole + sixteenths) * 25.4) / 16;
        const fractions = [
          `${whole} ${sixteenths}/16`,
          `${whole}-${sixteenths}/16`,
          `${whole} ${sixteenths}⁄16`,
          `${whole} ${raised(sixteenths)}⁄${lowered(16)}`,
          `${whole}${raised(sixteenths)}⁄${lowered(16)}`,
          `  ${whole}   ${sixteenths} / 16`,
        ];
        if (sixteenths % 2 === 0)
          fractions.push(`${whole}${SIGNS[sixteenths / 2]}`, `${whole} ${SIGNS[sixteenths / 2]}`);
        for (const text of fractions) {
          expect(readLength(`${text}${unit}`, "mm"), text + unit).toBeCloseTo(mm, 9);
          expect(readLength(text, "in"), text).toBeCloseTo(mm, 9);
        }
      }),
    );
  });

  it("reads the same decimals with a point and with a comma, in each unit", () => {
    fc.assert(
      fc.property(
        fc.nat(99),
        fc.nat(99),
        fc.constantFrom(["mm", 1] as const, ["cm", 10] as const, ["in", 25.4] as const),
        (whole, hundredths, [unit, factor]) => {
          const mm = (whole + hundredths / 100) * factor;
          const part = String(hundredths).padStart(2, "0");
          for (const sign of [".", ","])
            for (const text of [`${whole}${sign}${part}${unit}`, ` ${whole}${sign}${part} ${unit.toUpperCase()} `])
              expect(readLength(text, "mm"), text).toBeCloseTo(mm, 9);
          expect(readLength(`${whole},${part}`, "mm")).toBeCloseTo(whole + hundredths / 100, 9);
        },
      ),
    );
  });

  it("never throws and gives a finite length or none, whatever is typed", () => {
    const typed = fc.array(fc.constantFrom(..."0123456789 .,-–/⁄½¼¾⅛¹₂'\"”″inmcft°×"), { maxLength: 9 });
    fc.assert(
      fc.property(typed, fc.constantFrom("mm" as const, "in" as const), (letters, units) => {
        const mm = readLength(letters.join(""), units);
        expect(mm === undefined || Number.isFinite(mm)).toBe(true);
      }),
    );
  });
});

describe("readNumber(text)", () => {
  it.each([
    ["6", 6],
    [" 2.5 ", 2.5],
    ["2,5", 2.5],
    [".5", 0.5],
    [",5", 0.5],
  ])("reads %j", (text, value) => {
    expect(readNumber(text)).toBe(value);
  });

  it.each(["", "six", "1e3", "0x10", "+6", "-6", "1,2,3", "९०", "Infinity"])("reads no number in %j", (text) => {
    expect(readNumber(text)).toBeNaN();
  });
});
