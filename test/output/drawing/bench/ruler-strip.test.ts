import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import { type Ruler, rulerStrip } from "../../../../src/output/drawing/bench/ruler-strip.ts";

const WIDTH = 280;
/** Half of three digits in letters of 15. */
const ROOM = 13;
const MM: Ruler = { units: "mm", step: 1 };

function draw(ruler: Ruler, marks: readonly number[], now: number) {
  const root = new DOMParser().parseFromString(rulerStrip(ruler, marks, now, WIDTH), "image/svg+xml").documentElement!;
  const all = [...root.getElementsByTagName("*")];
  const of = (name: string) => all.filter((one) => one.getAttribute("class") === name);
  const xs = (name: string) => of(name).map((one) => Number(one.getAttribute("x1")));
  return {
    lines: xs("ruler-line"),
    lengths: of("ruler-line").map((one) => Number(one.getAttribute("y2")) - Number(one.getAttribute("y1"))),
    now: xs("ruler-now")[0]!,
    figures: of("ruler-figure").map((one) => [one.textContent, Number(one.getAttribute("x"))] as const),
    others: of("ruler-other").length,
  };
}

describe("rulerStrip(ruler, marks, now, width)", () => {
  it("has the mark in its middle, on its line or between two", () => {
    const on = draw(MM, [40, 200], 0);
    expect(on.now).toBeCloseTo(WIDTH / 2, 1);
    expect(on.lines).toContain(on.now);
    const between = draw(MM, [56.5], 0);
    const [below, above] = [
      Math.max(...between.lines.filter((x) => x < between.now)),
      Math.min(...between.lines.filter((x) => x > between.now)),
    ];
    expect(between.now - below).toBeCloseTo(above - between.now, 1);
  });

  it.each([
    ["mm", 1, ["30", "40", "50"]],
    ["mm", 0.5, ["40"]],
    ["in", 25.4 / 16, ["1", "2"]],
    ["in", 25.4 / 8, ["1", "2"]],
    ["in", 25.4 / 32, ["2"]],
  ] as const)(
    "has figures at the longest lines, in %s with lines %d mm apart, and lines far enough apart to see",
    (units, step, figures) => {
      const drawn = draw({ units, step }, [40], 0);
      expect(drawn.figures.map(([words]) => words)).toEqual(figures);
      const longest = drawn.lines.filter((_, i) => drawn.lengths[i] === Math.max(...drawn.lengths));
      // A figure that would be cut off at an end is left out.
      expect(drawn.figures.map(([, x]) => x)).toEqual(longest.filter((x) => x >= ROOM && x <= WIDTH - ROOM));
      const gap = Math.min(...drawn.lines.slice(1).map((x, i) => x - drawn.lines[i]!));
      expect(gap).toBeGreaterThanOrEqual(6.9);
    },
  );

  it("ends where the ruler does, and shows other marks nearby", () => {
    const first = draw(MM, [4, 12, 90], 0);
    expect(first.lines[0]).toBeGreaterThan(0);
    expect(first.now).toBeCloseTo(first.lines[4]!, 1);
    expect(first.figures[0]![0]).toBe("0");
    expect(first.others).toBe(2);
  });
});
