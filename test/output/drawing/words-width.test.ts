import { describe, expect, it } from "vitest";
import { lettersWithin } from "../../../src/output/drawing/words-width.ts";

/** 7 pt in mm: 1 pt = 25.4 / 72 mm (CSS Values 4). */
const SEVEN_POINTS = (7 * 25.4) / 72;

describe("lettersWithin", () => {
  it("leaves words as they are asked for where the room takes them", () => {
    expect(lettersWithin(80, "spine", 3)).toEqual({ "font-size": 3 });
  });

  it("sets a little too long words lower, by an estimate of half a letter's height for each", () => {
    // 20 usual letters at 3 mm are 30 mm by the estimate; in 27 mm they are a tenth lower.
    expect(lettersWithin(27, "seen from above here", 3)).toEqual({ "font-size": expect.closeTo(2.7, 1) });
  });

  it("never goes below 7 pt: then the words are as wide as the room", () => {
    const set = lettersWithin(10, "a name of many letters", 3);
    expect(Math.abs(Number(set["font-size"]) - SEVEN_POINTS)).toBeLessThan(0.005);
    expect(set).toMatchObject({ textLength: 10, lengthAdjust: "spacingAndGlyphs" });
  });
});
