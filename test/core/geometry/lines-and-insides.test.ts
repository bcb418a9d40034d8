import { describe, expect, it } from "vitest";
import { insideOf } from "../../../src/core/geometry/inside.ts";
import { LineField } from "../../../src/core/geometry/line-field.ts";
import type { Point } from "../../../src/core/geometry/point.ts";
import { fc } from "../../seed.ts";

const at = fc.double({ min: 0, max: 60, noNaN: true });
const point = fc.tuple(at, at) as fc.Arbitrary<Point>;

const SQUARE = [
  [10, 10],
  [50, 10],
  [50, 50],
  [10, 50],
] as const;
const HOLE = [
  [20, 20],
  [20, 40],
  [40, 40],
  [40, 20],
] as const;

describe("insideOf(rings)", () => {
  // By hand: a square from 10 to 50 with a hole from 20 to 40, and in the hole a square from 25 to 35.
  it("is so between an outline and its hole, and in what lies in the hole", () => {
    const island = SQUARE.map(([x, y]): Point => [17.5 + x / 4 + 5, 17.5 + y / 4 + 5]);
    const isIn = insideOf([SQUARE, HOLE, island]);
    fc.assert(
      fc.property(point, ([x, y]) => {
        const within = (from: number, to: number) => from < x && x < to && from < y && y < to;
        expect(isIn({ x, y })).toBe((within(10, 50) && !within(20, 40)) || within(25, 35));
      }),
    );
  });
});

describe("LineField", () => {
  // The box is grown by none, so a level or upright line meets it where their ranges overlap.
  it("knows whether some of a line lies in a box", () => {
    const level = fc.tuple(at, at, at).map(([x, y, length]) => ({ x, y, length }));
    fc.assert(
      fc.property(fc.array(level, { maxLength: 8 }), point, fc.nat(20), (lines, [left, top], size) => {
        const field = new LineField(
          lines.map(({ x, y, length }) => [
            [x, y],
            [x + length, y],
          ]),
        );
        const box = { left, top, right: left + size, bottom: top + size };
        const meets = lines.some(
          ({ x, y, length }) => y >= top && y <= box.bottom && x <= box.right && x + length >= left,
        );
        expect(field.meets(box)).toBe(meets);
      }),
    );
  });

  it("takes lines later", () => {
    const field = new LineField();
    const box = { left: 5, top: 5, right: 6, bottom: 6 };
    expect(field.meets(box)).toBe(false);
    field.add([
      [0, 0],
      [20, 20],
    ]);
    expect(field.meets(box)).toBe(true);
  });
});
