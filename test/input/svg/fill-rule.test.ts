import { describe, expect, it } from "vitest";
import type { FillRule } from "../../../src/core/geometry/point.ts";
import { filledArea, onlyShape, perimeter, shoelace, windingNumber } from "./figure.ts";

// Geometry of the figures fillrule-nonzero.svg and fillrule-evenodd.svg of SVG 2, painting, "Winding rule".
const FIGURE = 'viewBox="0 0 1200 400"';
const STAR = "M 250,75 L 323,301 131,161 369,161 177,301 z";
const SAME =
  "M 600,81 A 107,107 0 0,1 600,295 A 107,107 0 0,1 600,81 z M 600,139 A 49,49 0 0,1 600,237 A 49,49 0 0,1 600,139 z";
const OPPOSITE =
  "M 950,81 A 107,107 0 0,1 950,295 A 107,107 0 0,1 950,81 z M 950,139 A 49,49 0 0,0 950,237 A 49,49 0 0,0 950,139 z";
// π 107² and π (107² − 49²).
const DISC = 35968.094;
const RING = 28425.13;

describe("readSvg of the W3C fill-rule figures", () => {
  // Areas of the star by exact fractions; the middle pentagon of 5414.769145 counts twice in the shoelace sum.
  it.each<[FillRule, number]>([
    ["nonzero", 17523.230855],
    ["evenodd", 12108.46171],
  ])("fills the star under %s", (rule, area) => {
    const shape = onlyShape(`<path fill-rule="${rule}" d="${STAR}"/>`, FIGURE);
    expect(shape.rule).toBe(rule);
    expect(filledArea(shape.rings, shape.rule)).toBeCloseTo(area, 5);
    expect(Math.abs(shoelace(shape.rings[0]!))).toBeCloseTo(22938, 8);
    expect(Math.abs(windingNumber(shape.rings, [250, 200]))).toBe(2);
  });

  it.each<[string, string, FillRule, number, number]>([
    ["same direction", SAME, "nonzero", DISC, 600],
    ["same direction", SAME, "evenodd", RING, 600],
    ["opposite directions", OPPOSITE, "nonzero", RING, 950],
    ["opposite directions", OPPOSITE, "evenodd", RING, 950],
  ])("fills rings of %s under its rule (%#)", (_, d, rule, area, x) => {
    const shape = onlyShape(`<path fill-rule="${rule}" d="${d}"/>`, FIGURE);
    const round = shape.rings.reduce((sum, ring) => sum + perimeter(ring), 0);
    // A chord strays from its curve by at most 1200 / 200000, so the area by at most that times the outlines' length.
    expect(Math.abs(filledArea(shape.rings, shape.rule) - area)).toBeLessThan((1200 / 200_000) * round);
    expect(windingNumber(shape.rings, [x, 188])).toBe(d === SAME ? 2 : 0);
  });

  it("inherits the rule and lets an inner one win", () => {
    expect(onlyShape(`<g fill-rule="evenodd"><path d="${STAR}"/></g>`, FIGURE).rule).toBe("evenodd");
    expect(onlyShape(`<g fill-rule="evenodd"><path fill-rule="nonzero" d="${STAR}"/></g>`, FIGURE).rule).toBe(
      "nonzero",
    );
  });
});

describe("the shoelace formula of these tests", () => {
  // The polygon of the Rosetta Code task "Shoelace formula for polygonal area", whose area is 30.
  it("gives the task's area for a polygon read from SVG", () => {
    const { rings } = onlyShape('<polygon points="3,4 5,11 12,8 9,5 5,6"/>');
    expect(shoelace(rings[0]!)).toBe(-30);
    expect(filledArea(rings, "nonzero")).toBeCloseTo(30, 12);
  });
});
