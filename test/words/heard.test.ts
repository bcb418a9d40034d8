import { describe, expect, it } from "vitest";
import { heardLength } from "../../src/words/heard.ts";
import "../english.ts";

const INCH = 25.4;

describe("heardLength(mm, style)", () => {
  it.each([
    [40, "40"],
    [56.5, "56.5"],
    [0.5, "0.5"],
    [138, "138"],
  ])("%d mm is said as “%s”", (mm, said) => {
    expect(heardLength(mm, { units: "mm", step: 0.5 })).toBe(said);
  });

  it.each([
    [2, "2"],
    [1 / 2, "one half"],
    [1 + 1 / 4, "1 and one quarter"],
    [3 / 4, "3 quarters"],
    [2 + 5 / 8, "2 and 5 eighths"],
    [1 + 13 / 16, "1 and 13 sixteenths"],
    [1 / 16, "one sixteenth"],
    [2 + 7 / 32, "2 and 7 thirty-seconds"],
  ])("%d in is said as “%s”", (inches, said) => {
    expect(heardLength(inches * INCH, { units: "in", step: INCH / 32 })).toBe(said);
  });
});
