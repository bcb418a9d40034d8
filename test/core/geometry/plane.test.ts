import { describe, expect, it } from "vitest";
import { areaOf, distanceTo, ellipsePerimeter, isInside, lengthOf, type Ring, shoelace } from "./plane.ts";

describe("the tests' own plane geometry", () => {
  // Source: SciPy, special.ellipe, example in its documentation: 4a·E(1 − b²/a²) with a = 3.5, b = 2.1.
  it("ellipsePerimeter agrees with a published value", () => {
    expect(ellipsePerimeter(3.5, 2.1)).toBeCloseTo(17.86889920437869, 11);
  });

  // Source: computed with mpmath, 30 digits.
  it.each([
    [2, 1, 9.68844822054768],
    [5, 3, 25.52699886339813],
    [10, 1, 40.63974180100896],
    [60, 40, 317.3087917858118],
    [70, 50, 379.6136893476382],
  ])("ellipsePerimeter(%d, %d)", (a, b, expected) => {
    expect(ellipsePerimeter(a, b)).toBeCloseTo(expected, 10);
  });

  // Source: complete elliptic integrals E as tests of others state them, for half axes of 1 and √(1 − m), outline 4·E(m):
  // E(m = 1/4) in Boost.Math, test_ellint_2.hpp (from functions.wolfram.com); E(0.2) and E(−10) in SciPy, test_basic.py.
  it.each([
    [0.25, 1.467462209339427],
    [0.2, 1.489035058095853],
    [-10, 3.639138038417769],
    [0, Math.PI / 2],
  ])("ellipsePerimeter is four times E(%d)", (m, integral) => {
    expect(ellipsePerimeter(1, Math.sqrt(1 - m))).toBeCloseTo(4 * integral, 11);
  });

  // Source: Rosetta Code, task "Shoelace formula for polygonal area".
  it("shoelace agrees with a published polygon", () => {
    const ring: Ring = [
      [3, 4],
      [5, 11],
      [12, 8],
      [9, 5],
      [5, 6],
    ];
    expect(Math.abs(shoelace(ring))).toBe(30);
  });

  // Source: closed form, a square frame.
  it("knows holes, insides and distances", () => {
    const square = (half: number): Ring => [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ];
    const frame = [square(10), square(6)];
    expect(areaOf(frame)).toBe(400 - 144);
    expect(lengthOf(frame[0]!)).toBe(80);
    expect(isInside([8, 1], frame)).toBe(true);
    expect(isInside([5, 1], frame)).toBe(false);
    expect(distanceTo([8.5, 0], frame)).toBeCloseTo(1.5, 12);
    expect(distanceTo([13, 14], frame)).toBeCloseTo(5, 12);
  });
});
