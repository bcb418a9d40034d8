import { describe, expect, it } from "vitest";
import type { Level } from "../../../src/core/kit/kit.ts";
import { gaugeLines } from "../../../src/core/plan/gauge-lines.ts";
import { gaugeSize } from "../../../src/core/plan/gauge-size.ts";
import { madeKit } from "../kit/made-kit.ts";

const level = (name: string, depth: number, line: number | undefined): Level => ({
  name,
  depth,
  line,
  background: false,
});

describe("gaugeLines(kit)", () => {
  it("are the gauge's own and those of levels that stand at none of them, from the fore-edge inward", () => {
    const levels = [level("rim", 18, 2), level("wall", 20, undefined), level("well", 34, 4)];
    expect(gaugeLines(madeKit({ gaugeLines: [10, 18, 26, 34], levels }))).toEqual([
      { number: 1, depth: 10, levels: [] },
      { number: 2, depth: 18, levels: [{ number: 1, name: "rim" }] },
      { number: undefined, depth: 20, levels: [{ number: 2, name: "wall" }] },
      { number: 3, depth: 26, levels: [] },
      { number: 4, depth: 34, levels: [{ number: 3, name: "well" }] },
    ]);
  });

  it("are just the levels' where the kit has no gauge, each with its own level alone", () => {
    const levels = [level("rim", 10, undefined), level("wall", 20, undefined)];
    expect(gaugeLines(madeKit({ gaugeLines: [], levels }))).toEqual([
      { number: undefined, depth: 10, levels: [{ number: 1, name: "rim" }] },
      { number: undefined, depth: 20, levels: [{ number: 2, name: "wall" }] },
    ]);
  });
});

// By hand: 14 mm beyond the deepest line to hold it by; one sheet takes 203 mm of height.
describe("gaugeSize(kit)", () => {
  it.each([
    ["the deepest level", [10, 20], 42, 180, { width: 56, height: 180 }],
    ["the deepest line", [10, 50], 42, 203, { width: 64, height: 203 }],
    ["no line at all", [], 42, 204, { width: 56, height: 203 }],
  ] as const)("reaches beyond %s", (_, lines, depth, leafHeight, size) => {
    const levels = [level("rim", 9, undefined), level("well", depth, undefined)];
    expect(gaugeSize(madeKit({ gaugeLines: lines, levels, book: { leafHeight } }))).toEqual(size);
  });
});
