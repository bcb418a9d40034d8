import { describe, expect, it } from "vitest";
import { backgroundLevel, misplacedLevel } from "../../../src/core/kit/kit.ts";
import { PRICED, TOOL_SUPPLIES } from "../../../src/core/kit/supply-id.ts";

describe("misplacedLevel(levels)", () => {
  it.each([
    [[10, 20, 30], -1],
    [[10], -1],
    [[10, 10, 30], 1],
    [[10, 20, 19.9], 2],
    [[20, 10, 5], 1],
    [[10, 20, 15, 12], 2],
  ])("of depths %j is %d", (depths, at) => {
    expect(misplacedLevel(depths.map((depth) => ({ depth })))).toBe(at);
  });
});

describe("backgroundLevel(levels)", () => {
  it.each([
    [[true, false, false], 1],
    [[false, false, true], 3],
  ])("counts from 1: %j is %d", (backgrounds, number) => {
    const levels = backgrounds.map((background) => ({ name: "", depth: 1, line: undefined, background }));
    expect(backgroundLevel(levels)).toBe(number);
  });
});

describe("what the program counts", () => {
  it("has each id once, as material or as tool", () => {
    const all = [...PRICED, ...TOOL_SUPPLIES];
    expect(new Set(all).size).toBe(all.length);
  });
});
