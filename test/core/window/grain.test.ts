import { describe, expect, it } from "vitest";
import { grainOf } from "../../../src/core/window/grain.ts";
import { madePart } from "../plan/made-pattern.ts";

// Common practice, no source: card bends along its grain, so frame and hinge have it head to tail; a strip is stiff along it.
describe("grainOf(part)", () => {
  it.each([
    ["a frame on the book", madePart("base-frame", "card", 120, 80, { frame: "wrap" }), "upright"],
    ["a stiff door", madePart("door", "card", 120, 80, { frame: "flat" }), "upright"],
    ["a holder, along its length", madePart("holder", "card", 150, 30, { frame: "own" }), "level"],
    ["a tall strip, along its length", madePart("closure-tab", "card", 14, 26, { frame: "own" }), "upright"],
    ["acetate", madePart("glazing", "acetate", 120, 80, { frame: "wrap" }), undefined],
    ["a paper guide", madePart("decoration-guide", "paper", 120, 80, { frame: "wrap" }), undefined],
    ["a motif", madePart("motif", "card", 20, 20, { motif: "gull" }), undefined],
  ] as const)("of %s", (_, part, grain) => {
    expect(grainOf(part)).toBe(grain);
  });
});
