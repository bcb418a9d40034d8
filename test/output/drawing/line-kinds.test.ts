import { describe, expect, it } from "vitest";
import { type LineKind, lineLook } from "../../../src/output/drawing/line-kinds.ts";

// Source: the pattern table of AutoCAD's ISO line types (seen through a second party), in line widths: dashed 12, −3; dash-dot
// 12, −3, 0.5, −3. SVG 2, painting, stroke-dasharray: an even list of lengths that are not negative and not all zero.
const IN_WIDTHS: Readonly<Record<LineKind, readonly number[]>> = {
  cut: [],
  score: [12, 3],
  position: [12, 3, 0.5, 3],
};

describe.each(Object.entries(IN_WIDTHS) as [LineKind, readonly number[]][])("lineLook(%s)", (kind, pattern) => {
  it.each([1, 0.5])("dashes by the line's width, times %d", (thin) => {
    const look = lineLook(kind, thin);
    const width = Number(look["stroke-width"]);
    const dashes = look["stroke-dasharray"]?.split(" ").map(Number) ?? [];
    expect(width).toBeGreaterThan(0);
    expect(dashes).toHaveLength(pattern.length);
    // Written to 0.01 mm, width and dash both.
    dashes.forEach((dash, i) => {
      expect(Math.abs(dash - pattern[i]! * width)).toBeLessThanOrEqual(0.0051 + 0.0051 * pattern[i]!);
      expect(dash).toBeGreaterThan(0);
    });
  });
});

describe("line kinds", () => {
  it("differ by pattern, all in black, and cut lines are the widest", () => {
    const looks = (Object.keys(IN_WIDTHS) as LineKind[]).map((kind) => lineLook(kind));
    expect(new Set(looks.map((look) => look["stroke-dasharray"] ?? "")).size).toBe(3);
    expect(new Set(looks.map((look) => look.stroke))).toEqual(new Set(["#000"]));
    const widths = looks.map((look) => Number(look["stroke-width"]));
    expect(Math.max(...widths.slice(1))).toBeLessThan(widths[0]!);
  });
});
