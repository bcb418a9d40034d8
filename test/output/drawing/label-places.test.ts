import { describe, expect, it } from "vitest";
import { placeLabels } from "../../../src/output/drawing/label-places.ts";
import { fc } from "../../seed.ts";

const line = fc.record({
  wished: fc
    .array(fc.double({ min: -50, max: 350, noNaN: true }), { minLength: 1, maxLength: 9 })
    .map((list) => list.toSorted((a, b) => a - b)),
  gap: fc.double({ min: 1, max: 30, noNaN: true }),
});
const cost = (places: readonly number[], wished: readonly number[]) =>
  places.reduce((sum, place, i) => sum + (place - wished[i]!) ** 2, 0);

describe("placeLabels(wished, gap, from, to)", () => {
  it("keeps labels apart, in order and on the line", () => {
    fc.assert(
      fc.property(line, ({ wished, gap }) => {
        const places = placeLabels(wished, gap, 0, 300);
        expect(places).toHaveLength(wished.length);
        places.forEach((place, i) => {
          expect(place).toBeGreaterThanOrEqual(-1e-6);
          expect(place).toBeLessThanOrEqual(300 + 1e-6);
          if (i > 0) expect(place - places[i - 1]!).toBeGreaterThanOrEqual(gap - 1e-6);
        });
      }),
      { numRuns: 500 },
    );
  });

  it("has no better place near by: moving any run of labels a little only costs", () => {
    fc.assert(
      fc.property(line, fc.nat(), fc.nat(), fc.constantFrom(-0.5, 0.5), ({ wished, gap }, a, b, step) => {
        const places = placeLabels(wished, gap, 0, 300);
        const [first, last] = [a % wished.length, b % wished.length].toSorted((x, y) => x - y) as [number, number];
        const moved = places.map((place, i) => (i >= first && i <= last ? place + step : place));
        const allowed =
          moved[0]! >= 0 && moved.at(-1)! <= 300 && moved.every((place, i) => i === 0 || place - moved[i - 1]! >= gap);
        if (allowed) expect(cost(moved, wished)).toBeGreaterThanOrEqual(cost(places, wished) - 1e-6);
      }),
      { numRuns: 1000 },
    );
  });

  it("stands evenly where there is no room", () => {
    expect(placeLabels([1, 2, 3], 60, 0, 100)).toEqual([0, 50, 100]);
  });
});
