import { describe, expect, it } from "vitest";
import { heightOf, openingOf, type Shape, withHeight, withOpening } from "../../../src/core/fit/shape.ts";

const SHAPES: Readonly<Record<Shape["solve"], Shape>> = {
  opening: { solve: "opening", pictureLeaves: 90, height: 120 },
  height: { solve: "height", pictureLeaves: "fill", opening: 1.5 },
  pictureLeaves: { solve: "pictureLeaves", height: 120, opening: 1.5 },
  nothing: { solve: "nothing", pictureLeaves: 90, height: 120, opening: 1.5 },
};

// By definition: what is solved is not stated; a figure of a reader's own takes the place of the stated one.
describe("a shape", () => {
  it.each([
    ["opening", 120, undefined],
    ["height", undefined, 1.5],
    ["pictureLeaves", 120, 1.5],
    ["nothing", 120, 1.5],
  ] as const)("that solves %s states the rest", (solve, height, opening) => {
    expect([heightOf(SHAPES[solve]), openingOf(SHAPES[solve])]).toEqual([height, opening]);
  });

  it.each([
    ["opening", { solve: "opening", pictureLeaves: 90, height: 80 }],
    ["height", { solve: "nothing", pictureLeaves: "fill", height: 80, opening: 1.5 }],
    ["pictureLeaves", { solve: "pictureLeaves", height: 80, opening: 1.5 }],
    ["nothing", { solve: "nothing", pictureLeaves: 90, height: 80, opening: 1.5 }],
  ] as const)("that solves %s takes another height", (solve, expected) => {
    expect(withHeight(SHAPES[solve], 80)).toEqual(expected);
  });

  it.each([
    ["opening", SHAPES.opening],
    ["height", { solve: "height", pictureLeaves: "fill", opening: 2 }],
    ["pictureLeaves", { solve: "pictureLeaves", height: 120, opening: 2 }],
    ["nothing", { solve: "nothing", pictureLeaves: 90, height: 120, opening: 2 }],
  ] as const)("that solves %s takes another opening, but for one that is solved", (solve, expected) => {
    expect(withOpening(SHAPES[solve], 2)).toEqual(expected);
  });
});
