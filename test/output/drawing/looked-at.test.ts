import { describe, expect, it } from "vitest";
import { lookedAt, lookedLine, lookedShape } from "../../../src/output/drawing/looked-at.ts";
import { linesIn } from "../../gallery/path-lines.ts";
import { fc } from "../../seed.ts";

const place = fc.double({ min: -200, max: 200, noNaN: true });
const ring = fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 40 });

describe("path data of drawings that are only looked at", () => {
  it("says a shape in steps of tenths", () => {
    const square = [
      [1.04, 2],
      [11.06, 2],
      [11.06, 2.46],
    ] as const;
    expect(lookedShape(square)).toBe("M1 2l10.1 0 0 .5z");
    expect(lookedLine(square)).toBe("M1 2l10.1 0 0 .5");
  });

  it("keeps every point within half a tenth, however many there are", () => {
    fc.assert(
      fc.property(ring, (points) => {
        const ends = linesIn(lookedLine(points)).flat();
        for (const [x, y] of points) {
          const near = ends.some(([px, py]) => Math.abs(px - x) < 0.0501 && Math.abs(py - y) < 0.0501);
          expect(near).toBe(true);
        }
      }),
    );
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
