import { SVGPathData } from "svg-pathdata";
import { describe, expect, it } from "vitest";
import type { Point } from "../../../src/core/geometry/point.ts";
import { shortLevels, shortRings, shortStrip, shortUprights } from "../../../src/output/drawing/short-path.ts";
import { fc } from "../../seed.ts";

/** The corners that an unrelated reader finds. */
function cornersOf(data: string): Point[][] {
  const rings: Point[][] = [];
  let at: Point = [0, 0];
  for (const command of new SVGPathData(data).toAbs().commands) {
    if (command.type === SVGPathData.CLOSE_PATH) continue;
    at = ["x" in command ? command.x : at[0], "y" in command ? command.y : at[1]];
    if (command.type === SVGPathData.MOVE_TO) rings.push([at]);
    else rings.at(-1)!.push(at);
  }
  return rings;
}

const place = fc.integer({ min: -30_000, max: 30_000 }).map((thousandths) => thousandths / 1000);

describe("brief path data", () => {
  it("leaves out what a reader can do without", () => {
    expect(shortStrip([0.75, 0.25], 0.5, 12)).toBe("M.25.5h.5v11.5h-.5");
    expect(
      shortRings([
        [
          [-0.25, 1],
          [0.25, 0.5],
          [0.25, 0.501],
          [1, 3],
        ],
      ]),
    ).toBe("M-.25 1l.5-.5.75 2.5z");
  });

  it("keeps every corner of an outline within half of its last place", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 60 }), (ring) => {
        const [read] = cornersOf(shortRings([ring]));
        const kept = ring.filter((point, i) => i === 0 || !sameAt(point, ring[i - 1]!));
        expect(read).toHaveLength(kept.length);
        for (const [i, [x, y]] of kept.entries()) {
          expect(Math.abs(read![i]![0] - x)).toBeLessThan(0.00501);
          expect(Math.abs(read![i]![1] - y)).toBeLessThan(0.00501);
        }
      }),
    );
  });

  it("tells an upright line from the end of the one above it, and a level one where that is shorter", () => {
    expect(
      shortUprights([
        [1.004, 2, 3.25],
        [1, 4.5, 12],
        [2, 0, 0.5],
      ]),
    ).toBe("M1 2v1.3m0 1.2v7.5M2 0v.5");
    expect(
      shortLevels([
        [14, 20.9, 61.5],
        [20.9, 27.8, 62],
        [14, 100, 171],
      ]),
    ).toBe("M14 61.5h6.9m0 .5h6.9M14 171h86");
  });

  it.each([
    ["upright", shortUprights, 1],
    ["level", shortLevels, 0],
  ] as const)("keeps each of many %s lines in its place, however many are told from the one before", (_, write, i) => {
    const lines = fc.array(fc.tuple(place, place, place), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(lines, (all) => {
        const read = cornersOf(write(all, 2));
        expect(read).toHaveLength(all.length);
        for (const [n, [a, b, c]] of all.entries()) {
          const [at, from, to] = i === 1 ? [a, b, c] : [c, a, b];
          const [begin, end] = read[n]!;
          for (const [is, wanted] of [
            [begin![1 - i], at],
            [end![1 - i], at],
            [begin![i], from],
            [end![i], to],
          ] as const)
            expect(Math.abs(is! - wanted)).toBeLessThan(0.00501);
        }
      }),
    );
  });

  it("reads as the strip that was meant", () => {
    fc.assert(
      fc.property(place, place, place, place, (a, b, from, to) => {
        const [strip] = cornersOf(shortStrip([a, b], from, to));
        const [xs, ys] = [strip!.map(([x]) => x), strip!.map(([, y]) => y)];
        expect(Math.abs(Math.min(...xs) - Math.min(a, b))).toBeLessThan(0.00501);
        expect(Math.abs(Math.max(...xs) - Math.max(a, b))).toBeLessThan(0.01001);
        expect(ys[0]).toBe(round(from));
        expect(ys[2]).toBeCloseTo(round(to), 9);
      }),
    );
  });
});

/** Whether two places are one when kept to 0.01. */
function sameAt(a: Point, b: Point): boolean {
  return a.every((part, i) => Math.round(part * 100) === Math.round(b[i]! * 100));
}

function round(mm: number): number {
  return Number(mm.toFixed(1)) + 0;
}
