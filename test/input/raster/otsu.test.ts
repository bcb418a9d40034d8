import { describe, expect, it } from "vitest";
import { distinctValues, otsuLimits } from "../../../src/input/raster/otsu.ts";
import { fc } from "../../seed.ts";

/** The sum over classes of squared distances from the mean of each: straight from its definition. */
function spread(histogram: readonly number[], limits: readonly number[]): number {
  const bounds = [-1, ...limits, histogram.length - 1];
  let sum = 0;
  for (let k = 1; k < bounds.length; k += 1) {
    const values = histogram.flatMap((count, value) =>
      value > bounds[k - 1]! && value <= bounds[k]! ? Array<number>(count).fill(value) : [],
    );
    if (values.length === 0) return Number.POSITIVE_INFINITY;
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    sum += values.reduce((total, value) => total + (value - mean) ** 2, 0);
  }
  return sum;
}

function everyChoice(bins: number, count: number, from = 0): number[][] {
  if (count === 0) return [[]];
  return Array.from({ length: bins - from }, (_, i) => from + i).flatMap((first) =>
    everyChoice(bins, count - 1, first + 1).map((rest) => [first, ...rest]),
  );
}

describe("otsuLimits(histogram, classes)", () => {
  // The example of a widely used lesson: 36 pixels of levels 0 to 5; its T = 3 is where the upper class begins.
  const LESSON = [8, 7, 2, 6, 9, 4];

  it("parts the lesson's example below 3", () => {
    expect(otsuLimits(LESSON, 2)).toEqual([2]);
    // The lesson's own variances within classes, over 36 pixels: 0.4909 at T = 3, 0.5561 at 2, 0.9779 at 4.
    expect([3, 2, 4].map((t) => (spread(LESSON, [t - 1]) / 36).toFixed(4))).toEqual(["0.4909", "0.5561", "0.9779"]);
  });

  it("parts it into {0, 1}, {2, 3} and {4, 5}, as an exhaustive search does", () => {
    expect(otsuLimits(LESSON, 3)).toEqual([1, 3]);
    expect(spread(LESSON, [1, 3]) / 36).toBeCloseTo(0.2222934, 6);
  });

  it("gives the limits of scikit-image's test_multiotsu_output", () => {
    const histogram = new Array<number>(256).fill(0);
    for (const [value, count] of [
      [0, 6381],
      [64, 1187],
      [128, 1187],
      [192, 1245],
    ] as const)
      histogram[value] = count;
    expect(otsuLimits(histogram, 4)).toEqual([0, 64, 128]);
    expect(otsuLimits(histogram, 5)).toBeUndefined();
  });

  it("finds no worse limits than trying all does", () => {
    const histograms = fc.array(fc.oneof(fc.constant(0), fc.nat(20)), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(histograms, fc.integer({ min: 2, max: 4 }), (histogram, classes) => {
        const limits = otsuLimits(histogram, classes);
        if (distinctValues(histogram) < classes) {
          expect(limits).toBeUndefined();
          return;
        }
        const choices = everyChoice(histogram.length - 1, classes - 1);
        const least = Math.min(...choices.map((choice) => spread(histogram, choice)));
        expect(limits).toHaveLength(classes - 1);
        expect(spread(histogram, limits!)).toBeCloseTo(least, 6);
      }),
    );
  });
});
