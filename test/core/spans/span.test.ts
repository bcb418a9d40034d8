import { describe, expect, it } from "vitest";
import { cutsBetween } from "../../../src/core/spans/span.ts";

describe("cutsBetween(spans, depths)", () => {
  // Common practice, no source: a cut frees two flaps, so it goes as deep as the deeper one is folded.
  it("cuts at each boundary to the deeper of the two levels, not at head or tail", () => {
    const spans = [
      { from: 0, to: 46.5, level: 2 },
      { from: 46.5, to: 66.5, level: 1 },
      { from: 66.5, to: 143.5, level: 3 },
      { from: 143.5, to: 163.5, level: 1 },
      { from: 163.5, to: 216, level: 2 },
    ];
    expect(cutsBetween(spans, [18, 26, 42])).toEqual([
      { at: 46.5, depth: 26 },
      { at: 66.5, depth: 42 },
      { at: 143.5, depth: 42 },
      { at: 163.5, depth: 26 },
    ]);
  });

  it("has no cut on a leaf of one span", () => {
    expect(cutsBetween([{ from: 0, to: 216, level: 2 }], [18, 26])).toEqual([]);
  });
});
