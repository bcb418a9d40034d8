import { describe, expect, it } from "vitest";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { pressCount } from "../../../src/build/print/press-count.ts";

const GIB = 2 ** 30;

describe("pressCount(asked, cores, free)", () => {
  it.each([
    [1, 8 * GIB, 1],
    [2, 8 * GIB, 2],
    [16, 64 * GIB, 2],
    [16, 1.5 * GIB, 1],
    [16, 0.1 * GIB, 1],
  ])("takes for %i cores and %d bytes of free memory %i unasked", (cores, free, count) => {
    expect(pressCount("", cores, free)).toBe(count);
  });

  it("takes as many as are asked for, whatever the machine", () => {
    expect(pressCount("1", 8, 8 * GIB)).toBe(1);
    expect(pressCount("8", 1, GIB)).toBe(8);
  });

  it.each(["0", "9", "two", "1.5", "-1"])("refuses %j, and says what is allowed", (asked) => {
    expect(() => pressCount(asked)).toThrow(BuildError);
    expect(() => pressCount(asked)).toThrow(/LEAFLIGHT_PRESSES is “.*from 1 to 8/);
  });
});
