import { describe, expect, it } from "vitest";
import { tacksOf } from "../../../src/core/spans/tacks.ts";

const whole = (level: number) => [{ from: 0, to: 200, level }];

describe("tacksOf(spans, next, depths)", () => {
  // A flap of depth d covers radii W − 2d … W − d; the next leaf's body reaches to W − e, so e − d of it is free.
  it.each([
    [10, 14, 0],
    [10, 15, 0],
    [10, 15.1, 1],
    [10, 30, 1],
    [20, 10, 0],
    [20, 30, 0],
    [20, 31, 1],
  ])("a flap %d deep before a leaf %d deep needs %d tacks", (depth, next, count) => {
    expect(tacksOf(whole(1), whole(2), [depth, next])).toHaveLength(count);
  });

  it("tacks every span of the book's last leaf", () => {
    const spans = [
      { from: 0, to: 50, level: 1 },
      { from: 50, to: 200, level: 2 },
    ];
    expect(tacksOf(spans, undefined, [10, 12])).toEqual([
      { from: 0, to: 50 },
      { from: 50, to: 200 },
    ]);
  });

  it("needs none before an unfolded leaf", () => {
    expect(tacksOf(whole(1), [], [10, 40])).toEqual([]);
  });

  it("tacks only where the next leaf is deeper, in one piece where its spans meet", () => {
    const spans = [
      { from: 0, to: 100, level: 1 },
      { from: 100, to: 200, level: 3 },
    ];
    const next = [
      { from: 0, to: 30, level: 1 },
      { from: 30, to: 60, level: 2 },
      { from: 60, to: 150, level: 3 },
      { from: 150, to: 200, level: 1 },
    ];
    expect(tacksOf(spans, next, [10, 18, 40])).toEqual([{ from: 30, to: 100 }]);
    expect(tacksOf(spans, next, [10, 14, 40])).toEqual([{ from: 60, to: 100 }]);
  });

  it("has no dot where a deeper span of the next leaf only meets the flap's end", () => {
    const spans = [
      { from: 0, to: 50, level: 3 },
      { from: 50, to: 100, level: 1 },
      { from: 100, to: 200, level: 3 },
    ];
    const next = spans.map((span) => ({ ...span }));
    expect(tacksOf(spans, next, [10, 18, 40])).toEqual([]);
  });

  it("keeps two flaps that both come loose apart, each with its own dot", () => {
    const spans = [
      { from: 0, to: 100, level: 1 },
      { from: 100, to: 200, level: 2 },
    ];
    expect(tacksOf(spans, whole(3), [10, 12, 40])).toEqual([
      { from: 0, to: 100 },
      { from: 100, to: 200 },
    ]);
  });
});
