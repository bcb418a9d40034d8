import { describe, expect, it } from "vitest";
import { holdingOf } from "../../../src/core/bench/holding.ts";
import { holdWidthOf } from "../../../src/core/pattern/hold-width.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { madeKit } from "../kit/made-kit.ts";
import { patternOf } from "../pattern/computed.ts";

const holdingIn = (pattern: Pattern) => holdingOf(pattern, (fan) => holdWidthOf(fan, pattern.levels, pattern.leaves));

describe("holdingOf(pattern, widthIn)", () => {
  // By hand: κ × 6 / 40 radians against the opening that the picture wants, 0.635.
  it.each([
    [4.2, true],
    [4.3, false],
  ])("tells with a bulk of %d whether the book holds: %s", (flapBulk, holds) => {
    const { fit, ...pattern } = patternOf(madeKit({ fit: { flapBulk } }));
    const holding = holdingIn({ ...pattern, fit });
    expect(holding).toMatchObject({ holds, opening: fit.opening, restingOpening: fit.restingOpening });
    expect(holding.holdWidth).toBe(fit.holdWidth);
    if (holds) expect(holding.restingWidth).toBe(fit.holdWidth);
    else expect(holding.restingWidth).toBeGreaterThan(fit.holdWidth);
  });

  it("holds a book that rests just as wide as its picture wants it", () => {
    const { fit, ...pattern } = patternOf(madeKit());
    expect(holdingIn({ ...pattern, fit: { ...fit, restingOpening: fit.opening } }).holds).toBe(true);
  });
});
