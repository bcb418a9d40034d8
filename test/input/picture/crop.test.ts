import { describe, expect, it } from "vitest";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { type Crop, cropDrawn } from "../../../src/input/picture/crop.ts";
import type { Drawn } from "../../../src/input/picture/drawn.ts";

const AT = ["picture", "crop"];

/** A rectangle on a canvas of 200 × 100. */
const drawn = (left: number, top: number, right: number, bottom: number): Drawn => ({
  width: 200,
  height: 100,
  shapes: [
    {
      level: 1,
      rule: "nonzero",
      rings: [
        [
          [left, top],
          [right, top],
          [right, bottom],
          [left, bottom],
        ],
      ],
    },
  ],
  notes: [],
});

const cropped = (from: Drawn, crop?: Crop): [number, number, readonly number[]] => {
  const { width, height, shapes } = cropDrawn(from, crop, AT);
  return [width, height, shapes[0]!.rings[0]![0]!];
};

describe("cropDrawn(drawn, crop, at)", () => {
  it.each<[string, Drawn, Crop | undefined, [number, number, number[]]]>([
    ["the canvas", drawn(10, 10, 30, 20), "canvas", [200, 100, [10, 10]]],
    ["the drawing", drawn(10, 10, 30, 20), "drawing", [20, 10, [0, 0]]],
    ["the drawing, also what is outside the canvas", drawn(-10, 10, 30, 20), "drawing", [40, 10, [0, 0]]],
    ["a rectangle", drawn(10, 10, 30, 20), { x: 5, y: 4, width: 50, height: 40 }, [50, 40, [5, 6]]],
    [
      "a rectangle that reaches out",
      drawn(10, 10, 30, 20),
      { x: -5, y: -4, width: 500, height: 400 },
      [500, 400, [15, 14]],
    ],
    ["the drawing where it is small", drawn(10, 10, 30, 20), undefined, [20, 10, [0, 0]]],
    ["what of it lies on the canvas", drawn(-100, 10, 30, 20), undefined, [30, 10, [-100, 0]]],
    // 120 × 100 of 200 × 100 is 60 %, and a hair less is not.
    ["the canvas from 60 % on", drawn(0, 0, 120, 100), undefined, [200, 100, [0, 0]]],
    ["the drawing below 60 %", drawn(0, 0, 119.9, 100), undefined, [119.9, 100, [0, 0]]],
  ])("takes %s", (_, from, crop, want) => {
    expect(cropped(from, crop)).toEqual(want);
  });

  it("tells of both boxes where it takes the drawing by itself, and else of nothing", () => {
    const notes = (from: Drawn, crop?: Crop): string[] => cropDrawn(from, crop, AT).notes.map(({ message }) => message);
    expect(notes(drawn(10, 10, 30, 20))).toEqual([
      "the drawing (x 10, y 10, 20 × 10) fills 1% of its canvas (x 0, y 0, 200 × 100), so it is taken without the rest. To keep the canvas, state crop: canvas",
    ]);
    expect(notes(drawn(10, 10, 30, 20), "drawing")).toEqual([]);
    expect(notes(drawn(0, 0, 200, 90))).toEqual([]);
  });

  it.each<[string, Drawn, Crop | undefined, RegExp]>([
    ["without shapes", { ...drawn(0, 0, 1, 1), shapes: [] }, undefined, /paints nothing/],
    ["outside its canvas", drawn(300, 0, 400, 50), undefined, /x 300, y 0, 100 × 50.*200 × 100/],
    ["outside its canvas, stated", drawn(300, 0, 400, 50), "canvas", /lies outside/],
    ["outside its rectangle", drawn(0, 0, 40, 50), { x: 50, y: 50, width: 9, height: 9 }, /x 50, y 50, 9 × 9/],
  ])("is an error for a drawing %s", (_, from, crop, says) => {
    expect(() => cropDrawn(from, crop, AT)).toThrow(ProblemError);
    expect(() => cropDrawn(from, crop, AT)).toThrow(says);
  });
});
