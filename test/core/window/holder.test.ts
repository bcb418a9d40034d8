import { describe, expect, it } from "vitest";
import { holderOf } from "../../../src/core/window/holder.ts";

// By hand, from the drawing: a strip 36 mm high, 20 mm beyond each slot; slots 2 mm wide and 22 mm deep from below, each
// beside a tongue of 2 mm, and free room between the tongues.
describe("holderOf(holdWidth)", () => {
  it("is a strip with two slots as far apart as the hold width", () => {
    expect(holderOf(100)).toEqual({
      id: "holder",
      kind: "holder",
      material: "card",
      count: 1,
      frame: "own",
      outlines: [
        [
          [0, 0],
          [140, 0],
          [140, 36],
          [121, 36],
          [121, 14],
          [119, 14],
          [119, 36],
          [117, 36],
          [117, 14],
          [23, 14],
          [23, 36],
          [21, 36],
          [21, 14],
          [19, 14],
          [19, 36],
          [0, 36],
        ],
      ],
      scores: [],
      marks: [
        {
          line: [
            [20, 0],
            [20, 14],
          ],
          kind: "first-picture-leaf",
        },
        {
          line: [
            [120, 0],
            [120, 14],
          ],
          kind: "last-picture-leaf",
        },
      ],
    });
  });
});
