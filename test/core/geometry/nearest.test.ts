import { describe, expect, it } from "vitest";
import { nearestCount } from "../../../src/core/geometry/nearest.ts";

describe("nearestCount(start, way, end, allowed)", () => {
  it.each([
    ["upwards", 0, 1, 10, (n: number) => n >= 7, 7],
    ["just at the end", 0, 1, 7, (n: number) => n >= 7, 7],
    ["beyond the end", 0, 1, 6, (n: number) => n >= 7, undefined],
    ["far upwards, stepped over and found again", 100, 1, 3000, (n: number) => n >= 1234, 1234],
    ["downwards", 50, -1, 4, (n: number) => n <= 17, 17],
    ["far downwards", 1200, -1, 4, (n: number) => n <= 333, 333],
    ["downwards, beyond the end", 50, -1, 18, (n: number) => n <= 17, undefined],
    ["a lone neighbour", 5, 1, 10, (n: number) => n === 6, 6],
    ["a lone number two off", 5, -1, 0, (n: number) => n === 3, 3],
    ["only the end, far away", 40, 1, 120, (n: number) => n >= 120, 120],
    ["never the start", 5, 1, 10, (n: number) => n === 5, undefined],
    ["below nothing", 0, -1, -8, (n: number) => n <= -6, -6],
    ["with an end that lies the other way", 4, -1, 10, () => true, undefined],
    ["with its end at the start", 4, 1, 4, () => true, undefined],
  ] as const)("%s", (_, start, way, end, allowed, nearest) => {
    expect(nearestCount(start, way, end, allowed)).toBe(nearest);
  });

  // By hand: a tenth of 20 is the first that is two; 22, 24.2, 26.4, 28.6, 30.8, 33, 36.3, 39.6 without their fractions.
  it("asks for every number at first, grows its steps by a tenth, and ends at its end", () => {
    const asked: number[] = [];
    nearestCount(0, 1, 41, (n) => asked.push(n) < 0);
    const each = Array.from({ length: 20 }, (_, i) => i + 1);
    expect(asked).toEqual([...each, 22, 24, 26, 28, 30, 33, 36, 39, 41]);
  });
});
