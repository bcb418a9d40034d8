import { describe, expect, it } from "vitest";
import { lookedAt } from "../../../src/output/drawing/looked-at.ts";
import { linesIn } from "../../gallery/path-lines.ts";

describe("path data of drawings that are only looked at", () => {
  it("says an outline in tenths", () => {
    const square = [
      [1.04, 2],
      [11.06, 2],
      [11.06, 7.46],
    ] as const;
    expect(lookedAt([square])).toBe("M1 2h10.1v5.5z");
  });

  it("leaves out of an outline what does not show", () => {
    const round = Array.from({ length: 1000 }, (_, i): [number, number] => [
      20 * Math.cos((i * Math.PI) / 500),
      20 * Math.sin((i * Math.PI) / 500),
    ]);
    const ends = linesIn(lookedAt([round], 0.1)).flat();
    expect(ends.length).toBeLessThan(60);
    // Chord and rounding together.
    for (const [x, y] of ends) expect(Math.abs(Math.hypot(x, y) - 20)).toBeLessThan(0.18);
  });
});
