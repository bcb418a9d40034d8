import { describe, expect, it } from "vitest";
import { OPERATIONS, referencePath, toolPaths } from "../../../src/core/packing/operation.ts";
import { madePart } from "../plan/made-pattern.ts";

const square = (from: number, to: number): [number, number][] => [
  [from, from],
  [to, from],
  [to, to],
  [from, to],
];

describe("toolPaths(part, place)", () => {
  const part = madePart("door", "card", 1, 1, {
    // The outer outline runs one way, the hole the other; a stiff fold and two marks.
    outlines: [square(0, 50), square(10, 20).toReversed(), square(25, 30)],
    scores: [
      [
        [0, 5],
        [50, 5],
      ],
    ],
    marks: [
      {
        line: [
          [1, 1],
          [2, 2],
        ],
        kind: "button",
      },
      {
        line: [
          [3, 3],
          [4, 4],
        ],
        kind: undefined,
      },
    ],
  });
  const paths = toolPaths(part, ([x, y]) => [x + 100, y + 200]);

  it("presses and marks before it cuts, and cuts the smaller outlines first", () => {
    expect(paths.map(({ operation, closed }) => [operation, closed])).toEqual([
      ["press-score", false],
      ["pencil-mark", false],
      ["pencil-mark", false],
      ["through-cut", true],
      ["through-cut", true],
      ["through-cut", true],
    ]);
    expect(paths.slice(3).map(({ points }) => points[0])).toEqual([
      [125, 225],
      [110, 220],
      [100, 200],
    ]);
  });

  it("moves every point to its place", () => {
    expect(paths[0]!.points).toEqual([
      [100, 205],
      [150, 205],
    ]);
    expect(paths[1]!.points).toEqual([
      [101, 201],
      [102, 202],
    ]);
    expect(paths.at(-1)!.points).toEqual(square(0, 50).map(([x, y]) => [x + 100, y + 200]));
  });
});

describe("referencePath(left, top)", () => {
  it("is a closed rectangle of 50 × 20 mm to measure", () => {
    const points = [
      [3, 7],
      [53, 7],
      [53, 27],
      [3, 27],
    ];
    expect(referencePath(3, 7)).toEqual({ operation: "measure-check", points, closed: true });
  });
});

describe("OPERATIONS", () => {
  it("are the layers of every cut file", () => {
    expect(OPERATIONS).toEqual(["through-cut", "press-score", "pencil-mark", "measure-check"]);
  });
});
