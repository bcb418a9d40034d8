import { describe, expect, it } from "vitest";
import { bisect } from "../../../src/core/geometry/bisect.ts";
import { greatest } from "../../../src/core/geometry/greatest.ts";

describe("bisect(f, target, low, high)", () => {
  it.each([
    [2, 0, 2, Math.SQRT2],
    [9, 1, 100, 3],
    [0.25, 0, 1, 0.5],
    [0, 0, 5, 0],
    [25, 0, 5, 5],
  ])("finds where a square is %d between %d and %d", (target, low, high, root) => {
    expect(bisect((x) => x * x, target, low, high)).toBeCloseTo(root, 12);
  });
});

describe("greatest(of, low, high)", () => {
  it.each([
    ["a roof, its ridge inside", (x: number) => -Math.abs(x - 3.7), 2, 10, 3.7],
    ["a roof, steeper on one side", (x: number) => (x < 8.1 ? x : 16.2 - 20 * (x - 8.1)), 2, 10, 8.1],
    ["what only rises", (x: number) => x, 2, 10, 10],
    ["what only falls", (x: number) => -x, 2, 10, 2],
  ])("finds the place of %s", (_, of, low, high, place) => {
    expect(Math.abs(greatest(of, low, high) - place)).toBeLessThan((high - low) * 1e-9);
  });

  it("asks about once for each step of the golden section", () => {
    let asked = 0;
    greatest(
      (x) => {
        asked += 1;
        return -Math.abs(x - 0.3);
      },
      0,
      1,
    );
    // 0.618 to the power of 44 is below 1e-9.
    expect(asked).toBeLessThanOrEqual(47);
  });
});
