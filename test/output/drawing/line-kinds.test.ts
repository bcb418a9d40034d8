import { describe, expect, it } from "vitest";
import { type LineKind, lineLook } from "../../../src/output/drawing/line-kinds.ts";

// General drafting habit, of which ISO 128 is the standard (from memory): what is cut and edges are continuous, what is folded
// is dashed, positions are dash-dot; widths come in steps of √2, and two that must be told apart differ by two steps.
const SHAPES: Readonly<Record<LineKind, number>> = { cut: 0, score: 2, position: 4, edge: 0 };
const KINDS = Object.keys(SHAPES) as LineKind[];

/** A step of ISO 128, √2, as its widths are rounded: 0.25, 0.35, 0.5. */
const STEP = 1.4;

/** What two strokes of a letter lie apart that normal eyes just read, a minute of arc, at arm's length, mm. */
const JUST_SEEN = 700 * Math.tan(Math.PI / 180 / 60);

function read(kind: LineKind, times = 1): { width: number; dashes: number[] } {
  const look = lineLook(kind, times);
  return {
    width: Number(look["stroke-width"]),
    dashes: look["stroke-dasharray"]?.split(" ").map(Number) ?? [],
  };
}

describe.each(KINDS)("lineLook(%s)", (kind) => {
  it("has the dashes of its kind, in black", () => {
    expect(read(kind).dashes).toHaveLength(SHAPES[kind]);
    expect(lineLook(kind)).toMatchObject({ stroke: "#000", fill: "none" });
  });

  it("has dots and gaps that are seen at arm's length, and gaps five times as long", () => {
    const { width, dashes } = read(kind);
    expect(width).toBeGreaterThan(0.95 * JUST_SEEN);
    for (const dash of dashes) expect(dash).toBeGreaterThan(2 * JUST_SEEN);
    for (const gap of dashes.filter((_, i) => i % 2 === 1)) expect(gap).toBeGreaterThan(5 * JUST_SEEN);
  });

  it("is as many times as large as it is asked to be", () => {
    const [plain, triple] = [read(kind), read(kind, 3)];
    expect(triple.width).toBeCloseTo(3 * plain.width, 6);
    triple.dashes.forEach((dash, i) => void expect(dash).toBeCloseTo(3 * plain.dashes[i]!, 6));
  });
});

describe("line kinds", () => {
  it("that have one pattern differ twice over in weight, all others by one step or by pattern and weight", () => {
    const width = (kind: LineKind): number => read(kind).width;
    expect(width("cut") / width("edge")).toBeGreaterThanOrEqual(2);
    expect(width("cut") / width("score")).toBeGreaterThanOrEqual(STEP);
    expect(width("score") / width("position")).toBeGreaterThanOrEqual(STEP);
  });

  it("dashes of a score line are short beside those of a position line", () => {
    expect(read("position").dashes[0]! / read("score").dashes[0]!).toBeGreaterThanOrEqual(2);
  });
});
