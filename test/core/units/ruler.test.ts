import { describe, expect, it } from "vitest";
import { rulerStep } from "../../../src/core/units/ruler.ts";

// Rulers in millimetres show halves at best; those in inches 32nds, 16ths and eighths of 25.4 mm.
describe("rulerStep(units, fineness)", () => {
  it.each([
    ["mm", "fine", 0.5],
    ["mm", "plain", 1],
    ["mm", "coarse", 1],
    ["in", "fine", 0.79375],
    ["in", "plain", 1.5875],
    ["in", "coarse", 3.175],
  ] as const)("in %s, %s, is %d mm", (units, fineness, mm) => {
    expect(rulerStep(units, fineness)).toBeCloseTo(mm, 12);
  });
});
