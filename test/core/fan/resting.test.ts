import { describe, expect, it } from "vitest";
import { flapBulkFromBatch, restingOpening, type Stack } from "../../../src/core/fan/resting.ts";
import type { Span } from "../../../src/core/spans/span.ts";
import { fc } from "../../seed.ts";

const STACK: Stack = {
  leafWidth: 140,
  blockThickness: 24,
  caliper: 0.12,
  unfolded: 0,
  flapBulk: 2,
  depths: [18, 26, 42],
};
const whole = (level: number): Span[] => [{ from: 0, to: 200, level }];
const times = (count: number, spans: Span[]): Span[][] => Array.from({ length: count }, () => spans);

/** The thickness of everything that lies at radius r and height u, leaf by leaf. */
function stackThickness(stack: Stack, leaves: readonly (readonly Span[])[], r: number, u: number): number {
  let thickness = stack.unfolded * stack.caliper;
  for (const leaf of leaves) {
    const span = leaf.find((one) => one.from <= u && u < one.to);
    if (!span) continue;
    const depth = stack.depths[span.level - 1]!;
    if (r <= stack.leafWidth - depth) thickness += stack.caliper;
    if (r >= stack.leafWidth - 2 * depth && r <= stack.leafWidth - depth) thickness += stack.flapBulk * stack.caliper;
  }
  return thickness;
}

/** The greatest (S − T)/r over a fine grid of radii and heights. */
function bruteForce(stack: Stack, leaves: readonly (readonly Span[])[]): number {
  let greatest = 0;
  for (let u = 0.25; u < 200; u += 0.5) {
    for (let r = 1; r < stack.leafWidth; r += 0.5) {
      greatest = Math.max(greatest, (stackThickness(stack, leaves, r, u) - stack.blockThickness) / r);
    }
  }
  return greatest;
}

describe("restingOpening(stack, leaves)", () => {
  it("is what the flaps add where they end, over that radius", () => {
    // 200 leaves with flaps of depth 42 reach in to radius 56: 200 · 0.12 · (1 + 2) − 24 = 48 mm there.
    expect(restingOpening(STACK, times(200, whole(3)))).toBeCloseTo(48 / 56, 12);
    expect(restingOpening(STACK, times(200, whole(1)))).toBeCloseTo(48 / 104, 12);
  });

  it("counts unfolded leaves as bodies alone", () => {
    expect(restingOpening({ ...STACK, unfolded: 100 }, times(100, whole(3)))).toBeCloseTo(24 / 56, 12);
    expect(restingOpening({ ...STACK, unfolded: 200 }, [])).toBe(0);
  });

  it("takes the height where most flaps lie on one another", () => {
    const upper: Span[] = [
      { from: 0, to: 120, level: 3 },
      { from: 120, to: 200, level: 1 },
    ];
    const lower: Span[] = [
      { from: 0, to: 100, level: 1 },
      { from: 100, to: 200, level: 3 },
    ];
    // Between 100 and 120 all 200 leaves are at level 3.
    expect(restingOpening(STACK, [...times(100, upper), ...times(100, lower)])).toBeCloseTo(48 / 56, 12);
    // Where they only meet at 100, never more than 100 are.
    const apart = upper.map((span) => ({
      ...span,
      from: Math.min(span.from, 100),
      to: span.to === 120 ? 100 : span.to,
    }));
    const meeting = restingOpening(STACK, [...times(100, apart), ...times(100, lower)]);
    // There 100 flaps of level 3 lie on 200 bodies at radius 56.
    expect(meeting).toBeCloseTo((200 * 0.12 + 100 * 0.24 - 24) / 56, 12);
  });

  it("is 0 where flaps add nothing", () => {
    expect(restingOpening({ ...STACK, flapBulk: 0 }, times(200, whole(2)))).toBe(0);
  });

  it("agrees with sampling the stack at every radius and height", () => {
    const marks = fc.uniqueArray(fc.integer({ min: 1, max: 199 }), { minLength: 0, maxLength: 5 });
    const leaf = fc
      .tuple(marks, fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 6, maxLength: 6 }))
      .map(([at, levels]) => {
        const ends = [...at.toSorted((a, b) => a - b), 200];
        return ends.map((to, i): Span => ({ from: ends[i - 1] ?? 0, to, level: levels[i]! }));
      });
    const stacks = fc.record({
      leaves: fc.array(leaf, { minLength: 1, maxLength: 8 }),
      repeat: fc.integer({ min: 10, max: 25 }),
      unfolded: fc.integer({ min: 0, max: 40 }),
      flapBulk: fc.constantFrom(0.5, 1, 2, 3.3),
    });
    fc.assert(
      fc.property(stacks, ({ leaves, repeat, unfolded, flapBulk }) => {
        const all = Array.from({ length: repeat }, () => leaves).flat();
        const caliper = 0.12;
        const stack = { ...STACK, unfolded, flapBulk, blockThickness: (all.length + unfolded) * caliper };
        // Sampled at half millimetres: 140 − 2 · 18, 26 and 42 are among them.
        const few = { ...stack, caliper: caliper * repeat, unfolded: unfolded / repeat };
        expect(restingOpening(stack, all)).toBeCloseTo(bruteForce(few, leaves), 9);
      }),
      { numRuns: 30 },
    );
  });
});

describe("flapBulkFromBatch(thickness, m, oneLeaf)", () => {
  it("finds the bulk that a batch was folded with", () => {
    // 20 leaves of 0.12 mm with flaps that count 2.5 leaves each: 20 · 0.12 · 3.5 = 8.4 mm.
    expect(flapBulkFromBatch(8.4, 20, 0.12)).toBeCloseTo(2.5, 12);
    expect(flapBulkFromBatch(2.4, 20, 0.12)).toBeCloseTo(0, 12);
  });
});
